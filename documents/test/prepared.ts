import type { DecisionData } from "../src/answer/decision-data.js";
import type { PrepBrief } from "../src/answer/prep-data.js";
import { prepBrief } from "../src/answer/prep-data.js";
import { loadPlan } from "../src/load-plan.js";
import { decided } from "./decided.js";
import { demoFiles } from "./fixtures.js";

/** The demo plan with what its prep sheet needs, some of its files replaced, decided from few draws. */
export async function preparedPlan(
  changed: Readonly<Record<string, unknown>> = {},
  asIf: (data: DecisionData) => DecisionData = (data) => data,
): Promise<{ readonly data: DecisionData; readonly brief: PrepBrief }> {
  const { parts } = await loadPlan("plan.json", demoFiles(changed));
  const data = asIf(await decided(changed));
  if (parts === undefined) throw new Error("no plan");
  return { data, brief: prepBrief({ parts, data }) };
}
