import type { RigidSwitches } from "../../src/flight/rigid/switches.js";

/** The rigid model without what the pitching model lacks. */
export const nothingBesidePitching: RigidSwitches = Object.freeze({
  roll: false,
  inertiaChange: false,
  windOverBody: false,
  pivot: false,
  misalignment: false,
  pastTop: false,
});
