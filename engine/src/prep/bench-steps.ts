import type { PrepFacts } from "./facts.js";
import { launchRules } from "./safety-code.js";
import type { StepText } from "./step.js";

const toCut = ({ cut }: PrepFacts): boolean => cut !== "none" && cut !== "made";

/** At the bench: the motor, its papers, its delay. */
export const benchSteps: readonly StepText[] = [
  { id: "motor-label", why: "right-motor-first", hazards: ["motor-burns"], restsOn: ["motor", "bag"] },
  {
    id: "instructions",
    why: "instructions-rule",
    hazards: ["motor-burns"],
    needs: ["motor-label"],
    rule: launchRules.heatDistance,
    restsOn: ["motor"],
  },
  { id: "airframe", why: "weak-part-found-early" },
  {
    id: "depth-before",
    why: "depth-has-a-start",
    needs: ["motor-label", "instructions"],
    applies: toCut,
    restsOn: ["removed"],
  },
  {
    id: "cut",
    why: "cut-is-final",
    hazards: ["cutting", "shavings"],
    needs: ["instructions", "depth-before"],
    applies: toCut,
    rule: launchRules.heatDistance,
    restsOn: ["setting"],
  },
  {
    id: "depth-after",
    why: "reading-proves-cut",
    needs: ["motor-label", "instructions", "cut"],
    applies: ({ cut }) => cut !== "none",
    restsOn: ["setting", "removed"],
  },
  {
    id: "ground-test",
    why: "charge-proven-by-test",
    hazards: ["loose-charge", "electronics-fire"],
    needs: ["airframe"],
    applies: ({ ownCharge }) => ownCharge,
    restsOn: ["bay", "recovery"],
  },
];
