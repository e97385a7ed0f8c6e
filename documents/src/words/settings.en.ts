import type { DecisionData } from "../answer/decision-data.js";
import { amount } from "./numbers.en.js";

/** How the columns of the openings are read. */
export const openingColumnsNote = "Open below: half / 9 in 10 of the openings. Above: 9 in 10, AGL.";

/** What clean and holds mean in this plan. */
export function cleanAndHoldsSentence({ limits, strength }: DecisionData): string {
  const bears = strength.rated
    ? `below ${amount(strength.speed, "m/s")}, what its weakest rated part bears`
    : `below ${amount(strength.speed, "m/s")}: nothing is rated, so twice the speed limit stands for it`;
  return `Clean: opens below ${amount(limits.openingSpeed, "m/s")} and above ${amount(limits.openingHeight, "m")} AGL. Holds: opens above that height and ${bears}.`;
}
