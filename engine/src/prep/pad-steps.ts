import { launchRules } from "./safety-code.js";
import type { PrepBranch, StepText } from "./step.js";

const scrub: readonly PrepBranch[] = ["scrub"];
const both: readonly PrepBranch[] = ["scrub", "misfire"];

/** With the range officer's leave, before the rocket is carried out. */
export const weatherStep: StepText = {
  id: "weather",
  why: "weather-has-aged",
  needs: ["card"],
  undoneBy: scrub,
  restsOn: ["weather", "setting", "guide"],
};

/** At the pad: the igniter goes in last. */
export const padSteps: readonly StepText[] = [
  {
    id: "circuit-dead",
    why: "dead-before-pad",
    hazards: ["circuit-live"],
    needs: ["scrub-off-pad", "scrub-circuit-dead"],
    gates: ["card", "weather"],
    undoneBy: scrub,
  },
  {
    id: "on-pad",
    why: "guide-holds-it",
    hazards: ["loaded-charge"],
    needs: ["card", "circuit-dead"],
    gates: ["weather"],
    undoneBy: scrub,
    restsOn: ["guide"],
  },
  {
    id: "children-back",
    why: "people-before-power",
    gates: ["on-pad", "misfire-igniter-out", "misfire-electronics-off"],
    undoneBy: both,
  },
  {
    id: "electronics-on",
    why: "power-upright",
    hazards: ["electronics-fire", "loaded-charge"],
    needs: ["electronics-off", "on-pad", "misfire-igniter-out", "misfire-electronics-off"],
    gates: ["children-back"],
    undoneBy: both,
    applies: ({ electronics }) => electronics,
  },
  {
    id: "igniter",
    why: "igniter-last",
    hazards: ["igniter"],
    needs: ["circuit-dead", "on-pad", "electronics-on", "misfire-igniter-out", "misfire-electronics-off"],
    gates: ["weather", "children-back"],
    undoneBy: both,
    rule: launchRules.igniterAtPad,
  },
  {
    id: "leads",
    why: "leads-after-igniter",
    hazards: ["igniter", "circuit-live"],
    needs: ["circuit-dead", "igniter"],
    undoneBy: both,
  },
  { id: "pad-clear", why: "clear-before-key", hazards: ["igniter"], needs: ["leads"], undoneBy: both },
];

/** The range officer's countdown. */
export const countdownSteps: readonly StepText[] = [
  {
    id: "armed",
    why: "key-in-last",
    hazards: ["circuit-live", "lifts-off"],
    needs: ["pad-clear"],
    gates: ["weather"],
    undoneBy: both,
  },
  {
    id: "launched",
    why: "launch-after-all",
    hazards: ["lifts-off"],
    needs: ["armed"],
    gates: ["weather"],
    undoneBy: both,
    rule: launchRules.countdown,
  },
];
