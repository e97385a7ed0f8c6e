import type { Decision, DecisionInputs } from "@delaywright/engine";
import type { SetFrom } from "../answer/debrief-data.js";

/** A delay as it was set, and who says so. */
export interface SetDelay {
  /** [s]; null for a motor without delay. */
  readonly set: number | null;
  readonly from: SetFrom | null;
}

/**
 * The delay that flew: as said now, else as written with the flight, else as the motor's readings have it, else as the plan
 * chose, else as the motor comes. Where nobody says, the suggested one stands for the comparison, and nothing is learned of it.
 *
 * @param stated said now [s]
 * @param written in the flight's findings [s]
 */
export function setDelay(
  inputs: DecisionInputs,
  { settings, choice, toCut }: Pick<Decision, "settings" | "choice" | "toCut">,
  stated: number | undefined,
  written: number | null,
): SetDelay {
  const { delay } = inputs.motor;
  if (delay.kind === "none") return { set: null, from: null };
  if (stated !== undefined) return { set: stated, from: "given" };
  if (written !== null) return { set: written, from: "findings" };
  if (delay.kind === "fixed") return { set: delay.seconds, from: "fixed" };
  if (inputs.cutSoFar !== undefined && settings[0] !== undefined) return { set: settings[0].delay, from: "reading" };
  const chosen = choice?.setting.delay ?? inputs.choice?.delay;
  if (chosen !== undefined) return { set: chosen, from: "choice" };
  return toCut === null ? { set: null, from: null } : { set: toCut.delay, from: "suggested" };
}
