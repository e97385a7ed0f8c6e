import type { DecisionInputs } from "@delaywright/engine";
import type { PlanParts } from "../load-plan.js";
import { planToEngine } from "../to-engine.js";

/**
 * The plan of the next flight: a motor that has flown is spent, so its readings count no more.
 *
 * @param parts of the plan
 * @param inputs that the plan was turned into
 */
export function withoutSpentMotor({ motorInHand, ...parts }: PlanParts, inputs: DecisionInputs): DecisionInputs {
  if (motorInHand === undefined) return inputs;
  const fresh = planToEngine(parts);
  return fresh.ok ? fresh.inputs : inputs;
}
