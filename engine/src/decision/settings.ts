import { ruleById } from "../rules/all-rules.js";
import type { CutPlan } from "./cut-plan.js";
import type { DecisionInputs } from "./inputs.js";
import { achievableSettings } from "./removals.js";
import { cuttingFacts } from "./rule-facts.js";

/** Stands for the charge of a motor without one, so that its flights are flown all the same. */
export const pluggedPlan: CutPlan = Object.freeze({ delay: 0, removed: 0, end: null, spacers: [], depth: 0 });

/** Settings that can be made, longest delay first; none for a motor without delay. */
export function settingsOf(inputs: DecisionInputs): CutPlan[] {
  const { delay } = inputs.motor;
  if (delay.kind === "none") return [];
  if (delay.kind === "fixed") return [{ delay: delay.seconds, removed: 0, end: null, spacers: [], depth: 0 }];
  return achievableSettings(delay, inputs.tool, inputs.cutSoFar);
}

/**
 * An uncut element set to a delay, whether the tool can make it or not: how is not said.
 *
 * @param delay [s], ≥ 0
 */
export function uncutSetTo(inputs: DecisionInputs, delay: number): CutPlan {
  const { delay: element } = inputs.motor;
  const removed = element.kind === "adjustable" ? Math.max(0, element.longest - delay) : 0;
  return { delay, removed, end: null, spacers: [], depth: null };
}

/** Rules that must pass before a cut is shown; no club can turn them off. */
const cuttingRules = ["instructions-not-confirmed", "tool-not-named"];

/** The motor's instructions are confirmed to allow shortening the delay, with the tool of the plan. */
export function cutAllowed(inputs: DecisionInputs): boolean {
  const facts = cuttingFacts(inputs, 0);
  return cuttingRules.every((id) => (ruleById(id)?.judge(facts)?.verdict ?? "pass") === "pass");
}

/** A setting whose odds may be shown, but not how it is cut. */
export function withoutCut<T extends CutPlan>(plan: T): T {
  return { ...plan, end: null, spacers: [], depth: null };
}
