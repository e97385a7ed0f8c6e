import type { Raw } from "@delaywright/documents";
import { useEffect, useState } from "react";
import { aside } from "./the-computer.js";
import type { PlanAnswer } from "./told.js";
import { usePlanAnswer } from "./use-plan-answer.js";

/**
 * The answer to a plan that is kept nowhere: it is forgotten with the screen that asked.
 *
 * @param plan with everything inside it; null: nothing is asked, and the last answer stays
 */
export function useAsideAnswer(plan: Raw | null): { readonly path: string; readonly answer: PlanAnswer } {
  const [path] = useState(() => aside.path());
  useEffect(() => {
    if (plan !== null) aside.lay(path, plan);
  }, [path, plan]);
  const answer = usePlanAnswer(path);
  // after the answer is no longer watched: nothing is asked of a plan that is gone
  useEffect(() => () => aside.lay(path, null), [path]);
  return { path, answer };
}
