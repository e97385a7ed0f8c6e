import { defaultRocket, formatQuantity } from "@delaywright/documents";
import { type FormPart, field } from "./model.js";

const canopy = (base: string, what: string): readonly FormPart[] => [
  field(`${base}.canopy.shape`, `${what}: canopy`),
  field(`${base}.canopy.diameter`, "Nominal diameter", { hint: "Of the circle with the canopy's whole area." }),
  field(`${base}.canopy.cd`, "Drag coefficient", { leftOut: "handbook's" }),
  field(`${base}.strength`, "Bears", { hint: "The canopy and its fittings." }),
];

/** Some sizes of shear pins. */
export function pinRows(at: string, label: string): FormPart {
  return {
    part: "rows",
    field: at,
    label,
    one: "size",
    start: {},
    parts: [field("size", "Thread"), field("count", "How many")],
  };
}

/** How the rocket comes down. */
export const recoveryParts: readonly FormPart[] = [
  field("recovery.motorCharge", "The motor's charge", {
    leftOut: "opens the rocket",
    words: { primary: "opens the rocket", backup: "stands behind electronics" },
  }),
  field("recovery.lineStretch", "Charge to line stretch", {
    leftOut: formatQuantity(defaultRocket.lineStretch, "time", "s"),
  }),
  ...canopy("recovery.main", "Main"),
  field("recovery.harness.length", "Length of the harness"),
  field("recovery.harness.strength", "Harness bears"),
  field("recovery.fittingsStrength", "Links, bolts, eyes bear", { aside: "the weakest" }),
  field("recovery.main.spillHole", "Hole cut into the main", {
    aside: "diameter",
    hint: "Beside the canopy's usual vent.",
  }),
  {
    part: "either",
    label: "Electronics open it",
    at: "recovery",
    turn: true,
    branches: [
      { id: "none", label: "none", keys: [], matches: (recovery) => !("electronics" in recovery), parts: [] },
      {
        id: "given",
        label: "yes",
        keys: ["electronics"],
        start: { electronics: { fires: "apogee" } },
        matches: (recovery) => "electronics" in recovery,
        parts: [
          field("recovery.electronics.delay", "Fires after apogee by", {
            leftOut: "0 s",
            along: { fires: "apogee" },
          }),
        ],
      },
    ],
  },
  {
    part: "either",
    label: "A drogue opens first",
    at: "recovery",
    turn: true,
    branches: [
      { id: "none", label: "none", keys: [], matches: (recovery) => !("drogue" in recovery), parts: [] },
      {
        id: "given",
        label: "yes",
        keys: ["drogue"],
        start: { drogue: {} },
        matches: (recovery) => "drogue" in recovery,
        parts: [
          ...canopy("recovery.drogue", "Drogue"),
          field("recovery.main.opensAt", "Main opens at", { aside: "above ground" }),
          pinRows("recovery.main.shearPins", "Pins that keep the main shut"),
        ],
      },
    ],
  },
];
