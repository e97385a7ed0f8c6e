import { type DecisionInputs, fly } from "@delaywright/engine";
import { type SteadinessData, steadinessData } from "../src/answer/steadiness-data.js";
import { loadPlan } from "../src/load-plan.js";
import { planToEngine } from "../src/to-engine.js";
import { demoFiles } from "./fixtures.js";

/** What the engine is given of the demo plan, some of its files replaced. */
export async function demoInputs(changed: Readonly<Record<string, unknown>> = {}): Promise<DecisionInputs> {
  const { parts, issues } = await loadPlan("plan.json", demoFiles(changed));
  const made = parts === undefined ? undefined : planToEngine(parts);
  if (made === undefined || !made.ok) throw new Error(JSON.stringify(made?.issues ?? issues));
  return made.inputs;
}

/** The three flights of inputs, in turbulence of a seed. */
export function steadinessOf(inputs: DecisionInputs, seed = 1): SteadinessData {
  const rigid = fly(inputs, { model: "rigid" });
  return steadinessData({ quick: fly(inputs), rigid, rough: fly(inputs, { model: "rigid", turbulence: seed }), seed });
}
