import type { Raw } from "@delaywright/documents";
import type { Entry } from "../store/index.js";

/** What a plan is made of, by name. */
export interface PlanNames {
  readonly rocket: string | null;
  readonly motor: string | null;
  /** Name of the motor in hand; null: a type only. */
  readonly inHand: string | null;
  readonly field: string | null;
  /** A depth was read before a first cut. */
  readonly measured: boolean;
}

function isRaw(value: unknown): value is Raw {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function named(raw: Raw | null): string | null {
  const name = raw?.["name"];
  return typeof name === "string" && name.trim() !== "" ? name.trim() : null;
}

/**
 * The names of a plan's documents, wherever they stand: in the library or inside the plan.
 *
 * @param plan the plan as typed
 * @param entries all documents
 */
export function planNames(plan: Raw, entries: readonly Entry[]): PlanNames {
  const at = (parent: Raw | null, field: string): Raw | null => {
    const value = parent?.[field];
    if (isRaw(value)) return value;
    return entries.find((entry) => entry.path === value)?.raw ?? null;
  };
  const motor = at(plan, "motor");
  const inHand = motor?.["kind"] === "motor-in-hand" ? motor : null;
  const readings = inHand?.["readings"];
  return {
    rocket: named(at(plan, "rocket")),
    motor: named(inHand === null ? motor : at(inHand, "type")),
    inHand: named(inHand),
    field: named(at(plan, "field")),
    measured: Array.isArray(readings) && readings.some((reading) => isRaw(reading) && reading["before"] !== undefined),
  };
}
