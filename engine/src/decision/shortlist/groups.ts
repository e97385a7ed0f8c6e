import { refusalOrder } from "./findings.js";
import type { RefusalCode, RefusedMotor } from "./judged-motor.js";

/** Motors refused for one reason. */
export interface RefusalGroup {
  readonly code: RefusalCode;
  /** This is their first reason; each carries all of its own. */
  readonly motors: readonly RefusedMotor[];
}

/**
 * Refused motors by their first reason, each motor once: what nothing can cure comes first, motors by their identifiers.
 *
 * @example
 * refusalGroups(refused).map(({ code, motors }) => [code, motors.length]); // [["too-wide-for-mount", 12], ["ceiling", 3]]
 */
export function refusalGroups(refused: readonly RefusedMotor[]): RefusalGroup[] {
  const sorted = [...refused].sort((a, b) => (a.id < b.id ? -1 : 1));
  return refusalOrder
    .map((code) => ({ code, motors: sorted.filter(({ refusals }) => refusals[0].code === code) }))
    .filter(({ motors }) => motors.length > 0);
}
