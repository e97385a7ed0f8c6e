import { useState } from "react";
import type { PlanAnswer } from "../compute/index.js";

/** Says the newer answer no more than that a new one was asked for? */
function isAsked(answer: PlanAnswer, told: PlanAnswer): boolean {
  return (
    answer.settling &&
    answer.told === told.told &&
    answer.issues === told.issues &&
    answer.pictures === told.pictures &&
    answer.failure === told.failure
  );
}

/**
 * What is drawn from an answer, as it was when something was last told: while a new answer is asked for nothing is drawn anew,
 * so that its first odds find the page at leisure.
 *
 * @param drawn changes its identity when it changes; it holds the answer as it stands
 */
export function useTold<Drawn extends { readonly answer: PlanAnswer }>(drawn: Drawn): Drawn {
  const [last, setLast] = useState(drawn);
  const asked = last.answer.told !== null && isAsked(drawn.answer, last.answer);
  if (!asked && last !== drawn) setLast(drawn);
  return asked ? last : drawn;
}
