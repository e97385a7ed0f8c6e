import { launchRules } from "@delaywright/engine";
import type { WindData } from "../answer/given-data.js";
import { amountIn, type UnitSystem } from "../quantity/systems.js";
import { wordForCheck } from "./checks.en.js";
import { amount, placeWords } from "./numbers.en.js";
import type { PrepTelling, StepWords } from "./prep-bench.en.js";

const degrees = (angle: number): string => amount((angle * 180) / Math.PI, "deg");
const wait = amount(launchRules.misfireWait.value ?? 0, "s");

function windWords(wind: WindData, units: UnitSystem): string {
  if (wind.kind === "aloft") return `winds at ${wind.heights} heights`;
  const speed = amountIn(wind.speed, "wind", units);
  return wind.from === null ? "a calm" : `${speed} from ${degrees(wind.from)}`;
}

function leanWords({ figures: { guide } }: PrepTelling): string {
  return guide.tilt < 1e-6 ? "upright" : `${degrees(guide.tilt)} from upright, towards ${degrees(guide.toward)}`;
}

function peopleWords({ figures: { people }, units }: PrepTelling): string {
  return people === null
    ? "As far as the range safety officer says."
    : `At least ${amountIn(people, "distance", units)} from the pad by the safety code's table, or as far as the range safety officer says.`;
}

function whereWords({ figures: { landing, unopened }, units }: PrepTelling): string[] {
  const place = ({ east, north }: { readonly east: number; readonly north: number }): string =>
    placeWords(east, north, units);
  return [...(landing === null ? [] : [`Expected down ${place(landing)}.`]), `If nothing opened ${place(unopened)}.`];
}

const igniterOut = "One person, from the side: leads off, then the igniter out, and away from the motor.";

/** Words of the steps at the pad, of the countdown and of both branches. */
export const padWords = {
  weather: {
    title: "Wind read again, checks looked at again",
    how: ({ figures: { wind, windTaken, stops }, units }) => [
      `The plan reckons with ${windWords(wind, units)}${windTaken === null ? "" : `, taken ${windTaken}`}. Write today's reading into the plan.`,
      ...stops.map((check) => `Stop: ${wordForCheck(check)}.`),
    ],
  },
  "circuit-dead": {
    title: "Launch circuit dead",
    how: () => ["Key out and in your hand, or the battery off; clips touched together without a spark."],
  },
  "on-pad": {
    title: "Rocket on its guide",
    how: (telling) => [
      `It slides the whole way by itself. The plan's guide stands ${leanWords(telling)}; lean it as the range officer says, and the plan with it.`,
      "Ground round the pad cleared of what burns.",
    ],
  },
  "children-back": {
    title: "Children and everybody not needed back",
    how: (telling) => ["At the pad only who arms it.", peopleWords(telling)],
  },
  "electronics-on": {
    title: "Electronics on",
    how: () => ["One at a time, upright, ends pointing away from faces. Its ready signal heard to its end."],
  },
  igniter: {
    title: "Igniter in, last",
    how: () => [
      "All the way in, as the motor's instructions show, and held so that it stays. Its wires shorted until then.",
    ],
  },
  leads: {
    title: "Leads clipped on",
    how: () => ["Clips bright and apart from each other and from the guide. No pull on the wires."],
  },
  "pad-clear": { title: "Everybody back", how: (telling) => [peopleWords(telling)] },
  armed: {
    title: "Key in, circuit answers",
    how: () => ["On the launch officer's word only. Sky and field looked at: no aircraft, nobody walking."],
  },
  launched: {
    title: "Launched",
    how: () => [
      `Countdown of ${amount(launchRules.countdown.value ?? 0, "s")}, loud. Eyes on it until it is down.`,
      `If it does not light: misfire. Nobody moves, interlock out, ${wait} of waiting.`,
    ],
  },
  "misfire-interlock": {
    title: "Interlock out, or the launch battery off",
    how: () => ["The key in your hand. Note the time: the wait counts from here."],
  },
  "misfire-wait": {
    title: `${wait} waited`,
    how: () => [
      "By the safety code, at least; longer where the range officer or the motor's instructions say so. Any smoke: begin again.",
    ],
  },
  "misfire-igniter-out": { title: "Leads off, igniter out", how: () => [igniterOut] },
  "misfire-electronics-off": {
    title: "Electronics off",
    how: () => ["Then on again in its turn: what sat through a countdown is started afresh."],
  },
  "scrub-circuit-dead": { title: "Launch circuit dead", how: () => ["Key out and in your hand, or the battery off."] },
  "scrub-igniter-out": { title: "Leads off, igniter out", how: () => [igniterOut] },
  "scrub-electronics-off": {
    title: "Electronics off",
    how: () => ["While it still stands upright, ends pointing away from faces."],
  },
  "scrub-off-pad": {
    title: "Rocket off the pad",
    how: () => [
      "Its charges are still in it: pointed away, and back to the bench to be made dead if it does not fly today.",
    ],
  },
} satisfies Readonly<Record<string, StepWords>>;

/** Words of the steps after the flight. */
export const afterWords = {
  "circuit-off": { title: "Launch circuit dead again", how: () => ["Key out. The range officer opens the range."] },
  found: {
    title: "Found",
    how: (telling) => [...whereWords(telling), "In a tree, on a wire or a road: leave it, and tell the range officer."],
  },
  approach: {
    title: "Come near from the side",
    how: () => [
      "Both ends pointing away from you. One person. If a charge may not have fired, wait, and look from afar first.",
    ],
  },
  "power-down": {
    title: "Electronics off first",
    how: () => ["Before anything else is touched or lifted. Note what it tells, after that."],
  },
  "charge-fired": {
    title: "Charge seen to have fired",
    how: () => [
      "Cap gone, powder burnt. If not: assume it live, point it away, and make it dead as the maker's instructions say, with the range officer.",
    ],
  },
  "second-charge": {
    title: "The other charge seen to have fired, too",
    how: () => ["Motor's charge and bay's charge, each by itself. One that did not fire is live."],
  },
  "motor-out": {
    title: "Motor out and cool",
    how: () => ["Delay as flown written down, log read, case dealt with as the maker's instructions say."],
  },
} satisfies Readonly<Record<string, StepWords>>;
