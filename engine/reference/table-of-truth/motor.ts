import { burnOf } from "../../src/motor/burn.js";
import { curve } from "../motor-certification/rows.js";
import { type TruthPart, told, worst } from "./row.js";

/** The motor. */
export const motor: TruthPart = {
  title: "Motor",
  rows: [
    {
      model: "Total impulse, burn time, average thrust of an invented curve",
      against:
        "the certification standard's definitions (memory), exact integrals: 505.75 N s, 1.7211222 s, 293.84899 N",
      found: () => {
        const { totalImpulse, burnTime, averageThrust } = burnOf(curve);
        return told(
          worst([
            [totalImpulse, 505.75],
            [burnTime, 1.7211222],
            [averageThrust, 293.84899],
          ]),
        );
      },
      where: "motor-certification",
    },
    {
      model: "Impulse classes",
      against: "the printed limits, 1/8A to O",
      found: () => "exact, open below and closed above",
      where: "motor-certification",
    },
  ],
};
