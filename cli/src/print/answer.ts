import type { Doubt, PlanContext } from "@delaywright/documents";
import type { Decision, DecisionInputs } from "@delaywright/engine";

/** A decision with all that it is told with. */
export interface Answer {
  readonly decision: Decision;
  readonly inputs: DecisionInputs;
  readonly context: PlanContext;
  readonly doubts: readonly Doubt[];
}
