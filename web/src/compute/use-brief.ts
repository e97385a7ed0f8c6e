import { useSyncExternalStore } from "react";
import { theComputer } from "./the-computer.js";
import type { Brief } from "./told.js";

/**
 * What is known of a plan for its card on the bench: the settled answer, or the last known one while it waits for its turn.
 *
 * @param plan path of the plan's document
 */
export function useBrief(plan: string): Brief {
  const { get, subscribe } = theComputer().brief(plan);
  return useSyncExternalStore(subscribe, get);
}
