import { useSyncExternalStore } from "react";
import { theComputer } from "./the-computer.js";

/**
 * How far the draws of a plan's answer have come, apart from the answer: it changes many times a second.
 *
 * @param plan path of the plan's document
 * @returns share that is flown, 0…1; null where none are under way
 */
export function useProgress(plan: string): number | null {
  const { get, subscribe } = theComputer().progress(plan);
  return useSyncExternalStore(subscribe, get);
}
