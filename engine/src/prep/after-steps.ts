import type { StepText } from "./step.js";

/** After the flight: find it, come near it, make it dead. */
export const afterSteps: readonly StepText[] = [
  { id: "circuit-off", why: "dead-before-range-opens", hazards: ["circuit-live"], needs: ["launched"] },
  { id: "found", why: "see-where-it-lies", needs: ["launched"], gates: ["circuit-off"] },
  { id: "approach", why: "side-on", hazards: ["late-charge"], needs: ["found"], gates: ["circuit-off"] },
  {
    id: "power-down",
    why: "power-before-hands",
    hazards: ["electronics-fire", "late-charge"],
    needs: ["approach"],
    applies: ({ electronics }) => electronics,
  },
  {
    id: "charge-fired",
    why: "fired-or-live",
    hazards: ["late-charge", "loaded-charge"],
    needs: ["approach", "power-down"],
  },
  {
    id: "second-charge",
    why: "each-charge-counts",
    hazards: ["loaded-charge"],
    needs: ["power-down", "charge-fired"],
    applies: ({ delay, ownCharge }) => delay !== "none" && ownCharge,
  },
  { id: "motor-out", why: "cool-and-fired", hazards: ["hot-motor"], needs: ["charge-fired", "second-charge"] },
];
