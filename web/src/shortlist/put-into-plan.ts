import type { Raw } from "@delaywright/documents";

/**
 * A plan on another motor: the delay that was chosen for the one before goes with it.
 *
 * @param motor path of the motor's document
 * @example
 * withMotor({ kind: "plan", version: 1, motor: "a.motor.json", choice: { delay: "9 s" } }, "b.motor.json");
 * // { kind: "plan", version: 1, motor: "b.motor.json" }
 */
export function withMotor(plan: Raw, motor: string): Raw {
  const { choice: _, ...rest } = plan;
  return { ...rest, motor } as Raw;
}
