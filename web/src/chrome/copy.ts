import type { Raw } from "@delaywright/documents";

/**
 * What a copy of a document starts with. A motor in hand is one physical motor: what was read on it and written on it stays its
 * own, so a copy is another motor of the same type and lot.
 *
 * @example
 * copyOf({ kind: "motor-in-hand", version: 1, name: "Bag 3", type: "demo-h150.motor.json", label: "3" });
 * // { kind: "motor-in-hand", version: 1, name: "Bag 3", type: "demo-h150.motor.json" }
 */
export function copyOf(raw: Raw): Raw {
  if (raw["kind"] !== "motor-in-hand") return raw;
  const { readings: _readings, label: _label, ...rest } = raw;
  return rest as Raw;
}
