import { cautions } from "@delaywright/documents";
import type { Answer } from "../answer.js";
import { amount, decimals, glued, percent, placeWords } from "../numbers.js";
import { bullet, wrap } from "../wrap.js";

/** Where it comes down if nothing opens, with the cautions of a late charge. */
export function unopenedText({ decision }: Answer): string {
  const { odds, east, north, ellipse95: ellipse } = decision.unopened;
  const lines = ["If nothing opens", wrap(`It comes down ${placeWords(east, north)}, fast and nose first.`, "  ")];
  if (ellipse !== null) {
    const azimuth = ((((ellipse.azimuth * 180) / Math.PI) % 180) + 180) % 180;
    lines.push(
      wrap(
        `19 in 20 of such landings lie in an ellipse ${amount(2 * ellipse.major, "m")} long and ${amount(2 * ellipse.minor, "m")} wide, its length along ${glued(decimals(azimuth, 0), "deg")}, its middle ${placeWords(ellipse.east, ellipse.north)}.`,
        "  ",
      ),
    );
  }
  if (decision.toCut !== null)
    lines.push(
      wrap(
        `Odds of coming in unopened at the delay to cut: ${percent(odds)}, if the charge fires and the rocket separates.`,
        "  ",
      ),
    );
  return [...lines, ...cautions["late-charge"].map(bullet)].join("\n");
}
