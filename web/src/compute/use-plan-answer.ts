import { useSyncExternalStore } from "react";
import { theComputer } from "./the-computer.js";
import type { PlanAnswer } from "./told.js";

/**
 * The answer to a plan, kept up to date: after each change rough odds at once, then ever finer ones, then the pictures.
 *
 * @param plan path of the plan's document
 */
export function usePlanAnswer(plan: string): PlanAnswer {
  const { get, subscribe } = theComputer().plan(plan);
  return useSyncExternalStore(subscribe, get);
}

/**
 * Whether new odds are asked for at this very moment, whatever the page has drawn so far.
 *
 * @param plan path of the plan's document
 */
export function isSettling(plan: string): boolean {
  return theComputer().plan(plan).get().settling;
}
