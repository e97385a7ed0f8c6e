import { useSyncExternalStore } from "react";
import { windowRules } from "./answers.js";
import { theComputer } from "./the-computer.js";
import type { WindowAnswer } from "./told.js";

const off: WindowAnswer = { ...windowRules.first, state: "off" };
const never = { get: () => off, subscribe: () => () => undefined };

/**
 * The weather that the motor as it is bears: odds over wind and tilt.
 *
 * @param plan path of the plan's document
 * @param active false: nothing is computed
 */
export function useWindow(plan: string, active: boolean): WindowAnswer {
  const { get, subscribe } = active ? theComputer().window(plan) : never;
  return useSyncExternalStore(subscribe, get);
}
