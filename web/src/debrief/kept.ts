import type { Raw } from "@delaywright/documents";
import type { DebriefTold } from "../compute/debrief/protocol.js";

function same(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== "object" || typeof other !== "object" || one === null || other === null) return false;
  const [keys, others] = [Object.keys(one), Object.keys(other)];
  const at = (value: object, key: string): unknown => (value as Readonly<Record<string, unknown>>)[key];
  return keys.length === others.length && keys.every((key) => key in other && same(at(one, key), at(other, key)));
}

/** Whether a flight's document holds what was found of it, to the last figure. */
export function isKept(flight: Raw, { findings }: Pick<DebriefTold, "findings">): boolean {
  const written: unknown = JSON.parse(JSON.stringify(findings));
  return typeof flight["plan"] !== "string" && same(flight["findings"], written);
}
