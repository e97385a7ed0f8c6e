import { useSyncExternalStore } from "react";
import { steadinessRules } from "./answers.js";
import { theComputer } from "./the-computer.js";
import type { SteadinessAnswer } from "./told.js";

const off: SteadinessAnswer = { ...steadinessRules.first, state: "off" };
const never = { get: () => off, subscribe: () => () => undefined };

/**
 * How steadily a plan flies: once as a rigid body, beside the default model.
 *
 * @param plan path of the plan's document
 * @param active false: nothing is computed
 */
export function useSteadiness(plan: string, active: boolean): SteadinessAnswer {
  const { get, subscribe } = active ? theComputer().steadiness(plan) : never;
  return useSyncExternalStore(subscribe, get);
}
