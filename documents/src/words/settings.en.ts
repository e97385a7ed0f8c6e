import type { DecisionData } from "../answer/decision-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { figureWords } from "./numbers.en.js";

/** How the columns of the openings are read. */
export const openingColumnsNote = "Open below: half / 9 in 10 of the openings. Above: 9 in 10, AGL.";

/** What clean and holds mean in this plan. */
export function cleanAndHoldsSentence({ limits, strength }: DecisionData, units: UnitSystem = "metric"): string {
  const bearable = figureWords(strength.speed, "speed", units, 0);
  const [speed, height] = [
    figureWords(limits.openingSpeed, "speed", units, 0),
    figureWords(limits.openingHeight, "distance", units),
  ];
  const bears = strength.rated
    ? `below ${bearable}, what its weakest rated part bears`
    : `below ${bearable}: nothing is rated, so twice the speed limit stands for it`;
  return `Clean: opens below ${speed} and above ${height} AGL. Holds: opens above that height and ${bears}.`;
}
