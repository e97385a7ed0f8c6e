import type { DriverName } from "@delaywright/engine";

/** What would narrow each uncertain input: short, said at the end of its bar. */
const remedies: Readonly<Record<DriverName, string>> = Object.freeze({
  dragScale: "one logged flight would halve it",
  totalImpulse: "another lot is another draw",
  burnTime: "another lot is another draw",
  mass: "weigh it again, ready to fly",
  inertia: "swing it and time it",
  balance: "balance it again, ready to fly",
  guideTilt: "set the guide with a level",
  windSpeed: "read it again at the pad",
  windFrom: "read it again at the pad",
  windExponent: "a reading aloft would tell",
  windFloor: "calmer air is steadier",
  temperature: "read it again at the pad",
  delay: "logged flights of this motor would tell",
  cutDepth: "measure before and after",
});

/** What would narrow an uncertain input; empty for one that is not known. */
export function remedyFor(input: string): string {
  return Object.hasOwn(remedies, input) ? remedies[input as DriverName] : "";
}

/** What the bars are shares of. */
export type DriversOf = "timing" | "coast" | "odds";

const wholes: Readonly<Record<DriversOf, string>> = Object.freeze({
  timing: "the spread in opening time",
  coast: "the spread in the time to the top",
  odds: "the difference from flight to flight in the odds of a clean opening",
});

/** What the bars are shares of, for a sentence. */
export function wholeOf(of: DriversOf): string {
  return wholes[of];
}
