import type { Raw } from "@delaywright/documents";
import { dayOf } from "../chrome/day.js";

/** A reading of the weather this old must be read again before it counts [min]. Own default, no source. */
const STALE_AFTER = 60;

/** How old a plan's reading of the weather is. */
export interface WindAge {
  /** Time of day as typed: `10:40`. */
  readonly taken: string;
  /** Since then. */
  readonly minutes: number;
  readonly stale: boolean;
}

/**
 * The age of a plan's reading of the weather. On any other day than the plan's it is no reading to be made again.
 *
 * @returns null where no time was given, or on another day
 */
export function windAge(plan: Raw, now: Date): WindAge | null {
  const taken = (plan["weather"] as { readonly taken?: unknown } | null | undefined)?.taken;
  const parts = typeof taken === "string" ? /^(\d{1,2}):(\d\d)/.exec(taken) : null;
  if (parts === null || typeof taken !== "string" || plan["date"] !== dayOf(now)) return null;
  const minutes = now.getHours() * 60 + now.getMinutes() - (Number(parts[1]) * 60 + Number(parts[2]));
  return minutes < 0 ? null : { taken, minutes, stale: minutes > STALE_AFTER };
}
