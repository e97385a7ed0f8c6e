import type { PrepFacts } from "./facts.js";
import { launchRules } from "./safety-code.js";
import type { StepText } from "./step.js";

const electronics = (facts: PrepFacts): boolean => facts.electronics;

/** What is done at the pad before anything else: after a misfire, and when the flight is called off. */
export const branchSteps: readonly StepText[] = [
  {
    id: "misfire-interlock",
    why: "dead-before-wait",
    hazards: ["not-lit", "circuit-live"],
    branch: "misfire",
    rule: launchRules.misfireWait,
  },
  {
    id: "misfire-wait",
    why: "wait-it-may-light",
    hazards: ["not-lit"],
    needs: ["misfire-interlock"],
    branch: "misfire",
    rule: launchRules.misfireWait,
    wait: launchRules.misfireWait.value ?? 0,
  },
  {
    id: "misfire-igniter-out",
    why: "out-as-it-went-in",
    hazards: ["igniter", "loaded-charge"],
    needs: ["misfire-wait"],
    branch: "misfire",
    takesBack: "igniter",
  },
  {
    id: "misfire-electronics-off",
    why: "off-while-hands-near",
    hazards: ["electronics-fire"],
    needs: ["misfire-igniter-out"],
    branch: "misfire",
    takesBack: "electronics-on",
    applies: electronics,
  },
  {
    id: "scrub-circuit-dead",
    why: "dead-before-pad",
    hazards: ["circuit-live"],
    needs: ["misfire-wait"],
    branch: "scrub",
    takesBack: "circuit-dead",
  },
  {
    id: "scrub-igniter-out",
    why: "out-as-it-went-in",
    hazards: ["igniter", "loaded-charge"],
    needs: ["misfire-wait", "scrub-circuit-dead"],
    branch: "scrub",
    takesBack: "igniter",
  },
  {
    id: "scrub-electronics-off",
    why: "off-while-hands-near",
    hazards: ["electronics-fire"],
    needs: ["scrub-igniter-out"],
    branch: "scrub",
    takesBack: "electronics-on",
    applies: electronics,
  },
  {
    id: "scrub-off-pad",
    why: "down-when-dead",
    hazards: ["loaded-charge"],
    needs: ["scrub-igniter-out", "scrub-electronics-off"],
    branch: "scrub",
    takesBack: "on-pad",
  },
];
