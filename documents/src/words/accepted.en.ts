import type { FileFailure } from "../file-failure.js";
import type { Dimension } from "../quantity/units.js";

/** What is accepted where a quantity of a dimension stands, and an example. */
export const quantityWords: Readonly<Record<Dimension, { readonly accepted: string; readonly example: string }>> =
  Object.freeze({
    length: { accepted: "a length with its unit", example: "180 mm" },
    mass: { accepted: "a mass with its unit", example: "1.95 kg" },
    time: { accepted: "a time with its unit", example: "9 s" },
    speed: { accepted: "a speed with its unit", example: "12 mph" },
    temperature: { accepted: "a temperature with its unit", example: "12 degC" },
    temperatureDifference: { accepted: "a difference of temperature with its unit", example: "2 degC" },
    angle: { accepted: "an angle with its unit", example: "8 deg" },
    inertia: { accepted: "a moment of inertia with its unit", example: "0.36 kg m2" },
    pressure: { accepted: "a pressure with its unit", example: "987 hPa" },
    force: { accepted: "a force with its unit", example: "1.1 kN" },
    energy: { accepted: "an energy with its unit", example: "100 J" },
    impulse: { accepted: "a total impulse with its unit", example: "320 N s" },
  });

/** The words of a list of choices: `one of "a", "b"`. */
export function oneOf(choices: readonly unknown[]): string {
  const shown = choices.map((choice) => JSON.stringify(choice));
  return shown.length === 1 ? (shown[0] ?? "") : `one of ${shown.join(", ")}`;
}

/** The words of a range, after what it is a range of. */
export function within(limits: {
  readonly above?: string | undefined;
  readonly from?: string | undefined;
  readonly to?: string | undefined;
}): string {
  const low = limits.above === undefined ? limits.from : limits.above;
  const lowWord = limits.above === undefined ? "from" : "above";
  if (low !== undefined && limits.to !== undefined) return `${lowWord} ${low} to ${limits.to}`;
  if (low !== undefined) return limits.above === undefined ? `${low} or more` : `above ${low}`;
  return limits.to === undefined ? "" : `up to ${limits.to}`;
}

const NOT_COVERED =
  /^(motors|stages?|staging|stageCount|boosters?|sustainers?|upperStage|clusters?|motorCount|airStarts?|airstarts?|parallel|strapOns?)$/i;

/** Whether a field asks for what this project does not cover: more than one stage or motor. */
export function notCovered(key: string, parent: PropertyKey | undefined): boolean {
  return NOT_COVERED.test(key) || (parent === "mount" && /^(count|number|motors?)$/i.test(key));
}

export const notCoveredWords = "one stage with one motor: clusters, staging and air starts are not covered";

/** What is accepted where a file could not be read. */
export const failureWords: Readonly<Record<FileFailure, string>> = Object.freeze({
  missing: "the path of a file that is there",
  "too-large": "a file of at most 5 MB",
  "not-a-file": "the path of a file, not of a folder",
  "not-allowed": "a file that may be read",
});

/** What is accepted where a table came without figures. */
export const tableWords = Object.freeze({
  accepted:
    "a thrust curve as lines with a time and a thrust (an altimeter's log, with a time and a height, pressure or acceleration in each line, is taken in at the Debrief of its plan)",
  example: '"0.10, 190"',
});
