import type { DecisionInputs } from "@delaywright/engine";
import { UsageError } from "../args/usage.js";

/**
 * A delay that was typed [s], where the motor can have it.
 *
 * @param option as it was typed: `--cut`
 * @throws {UsageError} where the motor has no delay, or none so long: nothing is put back
 */
export function askedDelay(option: string, { motor: { delay } }: DecisionInputs, asked: number): number {
  const longest = delay.kind === "adjustable" ? delay.longest : delay.kind === "fixed" ? delay.seconds : null;
  if (longest === null) throw new UsageError(`${option}: this motor has no delay; leave ${option} out`);
  if (asked <= longest) return asked;
  throw new UsageError(
    `${option}: "${asked} s" found; no more than the longest delay is accepted, ${longest} s, for example ${option} ${longest}s`,
  );
}
