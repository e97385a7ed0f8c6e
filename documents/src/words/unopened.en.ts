import type { DecisionData } from "../answer/decision-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { decimals, figureWords, glued, percent, placeWords } from "./numbers.en.js";

/** Where it comes down if nothing opens, a sentence each. */
export function unopenedSentences({ unopened, toCut }: DecisionData, units: UnitSystem = "metric"): string[] {
  const { odds, east, north, ellipse95: ellipse } = unopened;
  const lines = [`It comes down ${placeWords(east, north, units)}, fast and nose first.`];
  if (ellipse !== null) {
    const azimuth = ((((ellipse.azimuth * 180) / Math.PI) % 180) + 180) % 180;
    lines.push(
      `19 in 20 of such landings lie in an ellipse ${figureWords(2 * ellipse.major, "distance", units)} long and ${figureWords(2 * ellipse.minor, "distance", units)} wide, its length along ${glued(decimals(azimuth, 0), "deg")}, its middle ${placeWords(ellipse.east, ellipse.north, units)}.`,
    );
  }
  if (toCut !== null)
    lines.push(
      `Odds of coming in unopened at the delay to cut: ${percent(odds)}, if the charge fires and the rocket separates.`,
    );
  return lines;
}
