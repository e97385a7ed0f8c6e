import type { CardData, CardDelay } from "../card/card-data.js";
import { GLUE } from "../quantity/glue.js";
import { amountIn, type Measure, type UnitSystem } from "../quantity/systems.js";
import { decimals, delayWords, glued, holdsPercent, percent, placeWords, upperFirst } from "./numbers.en.js";
import { basisWarning, restsWords } from "./openings.en.js";
import { wordForWarning } from "./warnings.en.js";

/** Fixed words of a flight card. */
export const cardWords = Object.freeze({
  title: "Flight card",
  flyer: "Flyer",
  level: "Level",
  number: "Card no.",
  pad: "Pad",
  stop: "Stop",
  asCut: "As cut",
  suggested: "Suggested",
  choice: "Flyer's choice",
  delay: "delay",
  clean: "clean",
  holds: "holds",
  openBelow: "9 in 10 open below",
  openAbove: "and above",
  fromTop: "opens, from the top",
  fires: "fires first",
  notRead: "not read",
  notJudged: "not judged",
  notPassing: "Checks that do not pass",
  allPass: "Every check that was made passes.",
  notChecked: "Not checked",
  assumed: "Mind",
  code: "This plan, to be read back",
  noCode: "This plan is too long for a code.",
  noRoom: "No room for the plan's code.",
  signFlyer: "Flyer, signature and time",
  signOfficer: "Range safety officer, signature and time",
  after: ["opened clean", "opened fast", "unopened", "scrubbed", "misfire"] as readonly string[],
  flown: "delay flown",
  second: "s",
  authority:
    "Computed figures, not leave to fly: the motor maker's instructions, the safety code, the range safety officer and local law decide.",
});

/** A name and what belongs to it. */
export interface CardRow {
  readonly label: string;
  readonly value: string;
}

const listed = (...parts: readonly (string | null)[]): string => parts.filter((part) => part !== null).join(", ");

/** The rocket in lines. */
export function cardRocketLines({ rocket }: CardData, units: UnitSystem): string[] {
  const long = (value: number): string => amountIn(value, "length", units);
  const margin = (value: number): string => glued(decimals(value, 1), "cal");
  return [
    `${long(rocket.diameter)} across, ${amountIn(rocket.length, "distance", units, 2)} long`,
    `lift-off mass ${amountIn(rocket.liftOffMass, "mass", units)}, ready to fly`,
    `balance ${long(rocket.balanceReady)}, CP ${long(rocket.cp)} (${rocket.cpStated ? "as stated" : "computed"})`,
    `margin ${margin(rocket.marginAtGuideExit)} at guide exit, ${margin(rocket.marginAtBurnout)} at burnout`,
  ];
}

/** The motor in lines. */
export function cardMotorLines({ motor, guideExitSpeed, given }: CardData, units: UnitSystem): string[] {
  const { designation, maker, inHand } = motor;
  const hand =
    inHand === null
      ? null
      : listed(inHand.name, inHand.label && `no. ${inHand.label}`, inHand.lot && `lot ${inHand.lot}`);
  const leaves =
    guideExitSpeed === null ? "never leaves the guide" : `${amountIn(guideExitSpeed, "speed", units)} leaving it`;
  return [
    listed(designation, maker, hand),
    `${glued(decimals(motor.totalImpulse, 0), "N", "s")} in ${amountIn(motor.burnTime, "time", units)}, ${amountIn(motor.averageThrust, "force", units)} on average`,
    `thrust to weight ${decimals(motor.thrustToWeight, 1)}`,
    `guide ${amountIn(given.guide.travel, "distance", units, 2)}, ${leanWords(given.guide.tilt)}; ${leaves}`,
  ].filter((line) => line !== "");
}

function leanWords(tilt: number): string {
  return tilt === 0 ? "upright" : `leaning ${glued(decimals((tilt * 180) / Math.PI, 1), "deg")}`;
}

/** One delay of the card, cell by cell. */
export interface CardDelayCells {
  readonly name: string;
  readonly delay: string;
  /** How sure it is, when it was read, or why it was chosen; empty where there is nothing to say. */
  readonly note: string;
  /** Odds and opening; null where they are not known. */
  readonly odds: {
    readonly fires: string | null;
    readonly clean: string;
    readonly holds: string;
    readonly below: string;
    readonly above: string;
    readonly timing: string;
  } | null;
}

/**
 * One delay of the card in words.
 *
 * @param brief without when it was read and why it was chosen
 */
export function cardDelayCells(name: string, each: CardDelay, units: UnitSystem, brief: boolean): CardDelayCells {
  const { delay, sd, when, reason, setting } = each;
  const sure = sd === null ? "" : glued("±", decimals(sd, 1), "s");
  const read = when === null ? "" : `read ${when.replace("T", " ")}`;
  return {
    name,
    delay: sd === null ? delayWords(delay) : glued(decimals(delay, 1), "s"),
    note: brief ? sure : [sure, read, reason ?? ""].filter((part) => part !== "").join(", "),
    odds: setting && oddsCells(setting, units),
  };
}

function oddsCells(
  { odds, openingSpeed, openingHeight, secondsFromApogee, firesFirst }: NonNullable<CardDelay["setting"]>,
  units: UnitSystem,
) {
  const { p90 } = openingSpeed;
  const { p10 } = openingHeight;
  const { p05, p95 } = secondsFromApogee;
  const up = (value: number, measure: Measure, round: (value: number) => number): string => {
    const step = units === "metric" ? 1 : 0.3048;
    return amountIn(round(value / step) * step, measure, units, 0);
  };
  return {
    fires: firesFirst === null ? null : percent(firesFirst),
    clean: percent(odds.clean),
    holds: holdsPercent(odds.holds),
    below: p90 === null ? "–" : up(p90, "speed", Math.ceil),
    above: p10 === null ? "–" : up(p10, "distance", Math.floor),
    timing:
      p05 === null || p95 === null ? "unopened" : glued(`${signed(p05)} to ${signed(p95)}`, "s").replaceAll(" ", GLUE),
  };
}

/** Seconds with their sign: before the top it is a minus. */
function signed(seconds: number): string {
  const text = decimals(Math.abs(seconds), 1);
  return `${seconds < 0 && Number(text) > 0 ? "−" : "+"}${text}`;
}

/**
 * Height, opening, recovery, landing and weather, a row each.
 *
 * @param much `brief`: only what fits on a line; `least`: height and where it comes down unopened
 */
export function cardFlightRows(card: CardData, units: UnitSystem, much: "all" | "brief" | "least"): CardRow[] {
  const brief = much !== "all";
  const { ceiling, expectedHeight, apogeeHeight, opened } = card;
  const high = (value: number): string => amountIn(value, "distance", units);
  const below = `95${"\u00a0"}% of flights below ${high(apogeeHeight.p95)}`;
  const height =
    card.draws === 1 || expectedHeight === null
      ? high(expectedHeight ?? 0)
      : `${high(expectedHeight)} expected, ${below}`;
  const top = { label: "Height", value: `${height}${ceiling === null ? "" : `; ceiling ${high(ceiling)}`}` };
  const unopened = { label: brief ? "Unopened" : "If nothing opens", value: unopenedWords(card, units, brief) };
  if (much === "least") return [top, unopened];
  return [
    top,
    { label: "Opens by", value: opensWords(card, units, brief) },
    { label: "Recovery", value: recoveryWords(card, units) },
    ...(opened?.landing == null
      ? []
      : [
          {
            label: "Lands",
            value: `${placeIn(opened.landing.east, opened.landing.north, units)}${openedAtWords(card)}`,
          },
        ]),
    unopened,
    { label: "Weather", value: weatherWords(card, units) },
  ];
}

/** At which delay it opens, where more than one stands on the card. */
function openedAtWords({ choice }: CardData): string {
  return choice === null || choice.setting === null ? "" : `, opened at ${delayWords(choice.delay)}`;
}

function placeIn(east: number, north: number, units: UnitSystem): string {
  return placeWords(east, north, units);
}

function opensWords({ recovery, limits, strength }: CardData, units: UnitSystem, brief: boolean): string {
  const { electronicsDelay, motorCharge } = recovery;
  const speed = (value: number): string => amountIn(value, "speed", units, 0);
  const after =
    electronicsDelay !== null && electronicsDelay > 0
      ? ` ${amountIn(electronicsDelay, "time", units)} after the top`
      : " at the top";
  const by =
    electronicsDelay === null
      ? "the motor's charge"
      : motorCharge === "backup"
        ? `electronics${after}, the motor's charge behind it`
        : `the motor's charge and electronics${after}`;
  if (brief) return by;
  return `${by}; clean below ${speed(limits.openingSpeed)} and above ${amountIn(limits.openingHeight, "distance", units)}, holds below ${speed(strength.speed)}${strength.rated ? "" : " (nothing is rated)"}`;
}

function recoveryWords({ recovery, opened }: CardData, units: UnitSystem): string {
  const canopy = ({ shape, diameter }: { shape: string; diameter: number }): string =>
    `${shape} ${amountIn(diameter, "distance", units, 2)}`;
  const { drogue, main, mainOpensAt } = recovery;
  const second = mainOpensAt === null ? "" : ` at ${amountIn(mainOpensAt, "distance", units)}`;
  const canopies = drogue === null ? canopy(main) : `drogue ${canopy(drogue)}, main ${canopy(main)}${second}`;
  const landing = opened?.landing;
  if (landing == null) return `${canopies}; lands before it opens`;
  return `${canopies}; lands at ${amountIn(landing.descentSpeed, "speed", units)}, ${amountIn(landing.energy, "energy", units)}, ${amountIn(landing.time, "time", units, 0)} after ignition`;
}

function unopenedWords({ unopened: { east, north, ellipse95 } }: CardData, units: UnitSystem, brief: boolean): string {
  const place = placeIn(east, north, units);
  if (ellipse95 === null || brief) return place;
  const wide = (half: number): string => amountIn(2 * half, "distance", units);
  return `${place}; 19 in 20 in ${wide(ellipse95.major)} by ${wide(ellipse95.minor)} about ${placeIn(ellipse95.east, ellipse95.north, units)}`;
}

function weatherWords({ given, context }: CardData, units: UnitSystem): string {
  const { wind, temperature, pressure } = given;
  const blows = !context.windGiven
    ? "no wind given, so calm"
    : wind.kind === "aloft"
      ? `winds aloft from ${wind.heights} heights`
      : wind.from === null
        ? "calm"
        : `wind ${amountIn(wind.speed, "wind", units)} from ${glued(decimals((wind.from * 180) / Math.PI, 0), "deg")} at ${amountIn(wind.height, "distance", units)}`;
  return listed(
    blows,
    temperature === null ? "standard temperature" : amountIn(temperature, "temperature", units),
    pressure === null ? "standard pressure" : amountIn(pressure, "pressure", units),
    context.weatherTaken === undefined ? null : `taken ${context.weatherTaken}`,
  );
}

/** What the models were not held against, guesses that rule the answer, and what is unlikely: a clause each. */
export function cardWarnings({ warnings }: CardData): string[] {
  return warnings
    .filter((warning) => warning.code !== basisWarning)
    .map((warning) => upperFirst(wordForWarning({ ...warning, value: null })));
}

/**
 * On what the figures rest, and how they can be had again.
 *
 * @param brief only how they can be had again
 */
export function cardBasis(card: CardData, brief: boolean): string {
  const { suggested, draws, seed, model, version } = card;
  const rests = suggested?.setting == null ? "" : ` They rest on ${restsWords(card, suggested.setting)}.`;
  const odds = draws === 1 ? "One flight, which makes no odds" : `Odds of ${draws} flights`;
  const how = `${odds}, ${model} model, seed ${seed}, delaywright ${version}`;
  return brief ? `${how}.` : `${how}; they hold if the charge fires and the rocket separates.${rests}`;
}

/** Said in the place of a list that did not fit. */
export const seeWords = "see the plan";

/** Said in the place of what did not fit. */
export function moreWords(count: number): string {
  return `and ${count} more: ${seeWords}`;
}

/** What the code does not carry as it was given; empty where it carries all. */
export function codeNote(thinned: { readonly from: number; readonly to: number } | null): string {
  return thinned === null ? "" : ` Its thrust curve is thinned from ${thinned.from} to ${thinned.to} points.`;
}
