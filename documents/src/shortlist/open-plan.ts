import type { OpenPlan } from "@delaywright/engine";
import type { Issue } from "../issue.js";
import type { Placed, PlanParts } from "../load-plan.js";
import { planConflicts } from "../plan-conflicts.js";
import { contextOf, inputsOf, type PlanContext } from "../to-engine.js";

/** Names and words of a plan whose motor is still open. */
export type OpenContext = Omit<PlanContext, "motor" | "designation" | "maker" | "motorInHand" | "label" | "lot">;

/** A plan for any motor, or what is wrong with it. */
export type OpenedPlan =
  | { readonly ok: true; readonly plan: OpenPlan; readonly context: OpenContext }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** A plan without what belongs to its own motor: the choice of a delay, and the motor in hand with its cut. */
export function withoutOwnMotor({ motorInHand: _, ...parts }: PlanParts): PlanParts {
  const { choice: __, ...document } = parts.plan.document;
  return { ...parts, plan: { ...parts.plan, document } };
}

/** What is wrong with the plan's own motor, or between it and the tool, is no issue: other motors are asked about. */
function ofOwnMotor({ file, path, code }: Issue, motor: Pick<Placed<"motor">, "file" | "path">): boolean {
  return code === "tool-for-another-grain" || (file === motor.file && path.startsWith(motor.path));
}

/**
 * A plan in SI units, its motor left open for a shortlist.
 *
 * @param parts of a plan that was loaded without issues
 * @example
 * const opened = openPlan(parts);
 * if (opened.ok) await shortlist(candidates, opened.plan);
 */
export function openPlan(parts: PlanParts): OpenedPlan {
  const own = withoutOwnMotor(parts);
  const others = (issues: readonly Issue[]) => issues.filter((issue) => !ofOwnMotor(issue, parts.motor));
  const before = others(planConflicts(own));
  if (before.length > 0) return { ok: false, issues: before };
  const inputs = inputsOf(own);
  if ("file" in inputs) return { ok: false, issues: [inputs] };
  const issues = others(planConflicts(own, inputs));
  if (issues.length > 0) return { ok: false, issues };
  const { motor: _, choice: __, cutSoFar: ___, ...plan } = inputs;
  const { motor: ____, designation, maker, motorInHand, label, lot, ...context } = contextOf(own);
  return { ok: true, plan, context };
}
