import type { DecisionInputs, PlanWindow } from "@delaywright/engine";
import type { PlanContext } from "../to-engine.js";
import { type GivenData, givenData } from "./given-data.js";

/** A weather window as plain data: SI units. It is what `window --json` prints. */
export interface WindowData extends PlanWindow {
  readonly context: PlanContext;
  /** Today's wind and guide are in it. */
  readonly given: GivenData;
  readonly limits: DecisionInputs["limits"];
  readonly seed: number;
  /** At each point of the map; where nothing varies one is flown. */
  readonly draws: number;
  readonly model: "pitching" | "aligned";
}

/**
 * A weather window with what it is told with.
 *
 * @example
 * windowData(await planWindow(inputs, 9), inputs, context, { seed: 1, draws: 512, model: "pitching" }).edges;
 */
export function windowData(
  window: PlanWindow,
  inputs: DecisionInputs,
  context: PlanContext,
  { seed, draws, model }: Pick<WindowData, "seed" | "draws" | "model">,
): WindowData {
  return { context, given: givenData(inputs), limits: inputs.limits, ...window, seed, draws, model };
}
