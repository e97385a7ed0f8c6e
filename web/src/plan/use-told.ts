import { useState } from "react";
import type { PlanAnswer } from "../compute/index.js";

/**
 * The answer as it was last told: asking for a new one changes nothing of what is known.
 *
 * @param answer as it stands, asked anew or not
 */
export function useTold(answer: PlanAnswer): PlanAnswer {
  const [last, setLast] = useState(answer);
  const asked =
    answer.settling &&
    answer.told === last.told &&
    answer.issues === last.issues &&
    answer.pictures === last.pictures &&
    answer.failure === last.failure;
  if (!asked && last !== answer) setLast(answer);
  return asked ? last : answer;
}
