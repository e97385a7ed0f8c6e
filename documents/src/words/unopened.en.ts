import type { DecisionData } from "../answer/decision-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { ellipseWords } from "./ellipse.en.js";
import { flownWords } from "./headline.en.js";
import { percent, placeWords } from "./numbers.en.js";

/** Where it comes down if nothing opens, a sentence each. */
export function unopenedSentences({ unopened, ...flown }: DecisionData, units: UnitSystem = "metric"): string[] {
  const { odds, east, north, ellipse95: ellipse } = unopened;
  const lines = [`It comes down ${placeWords(east, north, units)}, fast and nose first.`];
  if (ellipse !== null) lines.push(`19 in 20 of such landings lie in ${ellipseWords(ellipse, units)}.`);
  if (flown.toCut !== null)
    lines.push(
      `Odds of coming in unopened at ${flownWords(flown)}: ${percent(odds)}, if the charge fires and the rocket separates.`,
    );
  return lines;
}
