import { decide } from "@delaywright/engine";
import { type DecisionData, decisionData } from "../src/answer/decision-data.js";
import { loadPlan } from "../src/load-plan.js";
import { planToEngine } from "../src/to-engine.js";
import { demoFiles } from "./fixtures.js";

/** The decision on the demo plan, some of its files replaced, from few draws. */
export async function decided(changed: Readonly<Record<string, unknown>> = {}): Promise<DecisionData> {
  const { parts, issues } = await loadPlan("plan.json", demoFiles(changed));
  const made = parts === undefined ? undefined : planToEngine(parts);
  if (made === undefined || !made.ok) throw new Error(JSON.stringify(made?.issues ?? issues));
  const decision = await decide(made.inputs, { draws: 64 });
  return decisionData({ ...made, decision, doubts: made.warnings });
}
