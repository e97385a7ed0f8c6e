import { decide } from "@delaywright/engine";
import { type DecisionData, decisionData } from "../src/answer/decision-data.js";
import { type CardData, cardData } from "../src/card/card-data.js";
import { loadPlan, type PlanParts } from "../src/load-plan.js";
import { planToEngine } from "../src/to-engine.js";
import { demoFiles } from "./fixtures.js";

/** The demo plan, some of its files replaced, with its decision from few draws and its card. */
export async function carded(
  changed: Readonly<Record<string, unknown>> = {},
): Promise<{ readonly card: CardData; readonly data: DecisionData; readonly parts: PlanParts }> {
  const { parts, issues } = await loadPlan("plan.json", demoFiles(changed));
  const made = parts && planToEngine(parts);
  if (parts === undefined || made === undefined || !made.ok)
    throw new Error(JSON.stringify(made === undefined || made.ok ? issues : made.issues));
  const decision = await decide(made.inputs, { draws: 64 });
  const data = decisionData({ ...made, decision, doubts: made.warnings });
  return { card: cardData({ data, parts, computed: "2026-05-02 11:05", version: "0.1.0" }), data, parts };
}
