import type { PrepFigures } from "../answer/prep-data.js";
import { amountIn, type UnitSystem } from "../quantity/systems.js";
import { chargeMassWords, type StepWords } from "./prep-bench.en.js";

function canopyWords({ shape, diameter }: PrepFigures["main"] | NonNullable<PrepFigures["drogue"]>, units: UnitSystem) {
  return `${amountIn(diameter, "distance", units, 2)}, ${shape}`;
}

function pinWords(pins: PrepFigures["pins"]): string {
  return pins.map(({ size, count }) => `${count} of ${size}`).join(", ");
}

/** Words of the steps that shut the rocket, up to the card. */
export const packingWords = {
  "electronics-test": {
    title: "Electronics tried without a charge",
    how: () => ["Fresh battery, right settings, every output answers, sensors see the outside air."],
  },
  "electronics-off": {
    title: "Electronics off, and seen to be off",
    how: () => ["Switch off, no lamp, no sound; wires of the charges shorted until they are closed in."],
  },
  "bay-charge": {
    title: "Charge in the bay",
    how: ({ figures: { bayCharge }, units }) => [
      bayCharge === null
        ? "As much as the ground test showed."
        : `As much as the ground test showed; reckoned ${chargeMassWords(bayCharge, units)}.`,
      "One charge for each output, named on both.",
    ],
  },
  canopy: {
    title: "Canopy folded, its protector in place",
    how: ({ figures: { main, harness }, units }) => [
      `Main ${canopyWords(main, units)}${main.opensAt === null ? "" : `, to open at ${amountIn(main.opensAt, "distance", units)}`}.`,
      "Lines free and not twisted, flame-resistant protector or wadding between it and the charge.",
      ...(harness === null
        ? []
        : [`Harness ${amountIn(harness, "distance", units, 1)}, folded so that it runs out free.`]),
    ],
  },
  drogue: {
    title: "Drogue folded, its protector in place",
    how: ({ figures: { drogue }, units }) =>
      drogue === null ? [] : [`Drogue ${canopyWords(drogue, units)}. Lines free and not twisted.`],
  },
  links: {
    title: "Every link closed",
    how: () => ["Each one touched and named aloud: motor or bulkhead to harness, harness to canopy, harness to nose."],
  },
  joints: {
    title: "Nose and joints tried, vent hole open",
    how: () => [
      "They hold the rocket's own weight when it is lifted by the nose, and part by hand without a jerk.",
      "They must not part when drag pulls at burnout.",
    ],
  },
  pins: {
    title: "Shear pins in",
    how: ({ figures: { pins } }) => (pins.length === 0 ? [] : [`Pins: ${pinWords(pins)}.`]),
  },
  balance: {
    title: "Weighed and balanced, ready to fly",
    how: ({ figures: { readyMass, readyBalance }, units }) => [
      `The plan has ${amountIn(readyMass, "mass", units)}, balancing ${amountIn(readyBalance, "length", units)} behind the nose tip, motor in, no igniter.`,
      "Where it weighs or balances otherwise, the plan must be told: the delay to cut may be another.",
    ],
  },
  tracker: { title: "Tracker on and heard", how: () => ["Or none flies."] },
  name: {
    title: "Name and telephone on the airframe",
    how: () => ["To be read from outside, on each part that comes down by itself."],
  },
  card: {
    title: "Flight card shown, rocket looked at",
    how: ({ figures: { flyer, field, stops } }) => [
      `To the range safety officer${field === null ? "" : ` of ${field}`}${flyer === null ? "" : `, for ${flyer}`}: their word counts, not this sheet.`,
      ...(stops.length === 0 ? [] : ["Say which checks say stop."]),
    ],
  },
} satisfies Readonly<Record<string, StepWords>>;
