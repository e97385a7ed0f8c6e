import type { Raw } from "@delaywright/documents";
import { dayOf, timeOfDay } from "./day.js";

/** A reading of the weather this old must be read again before it counts [min]. Own default, no source. */
export const STALE_AFTER = 60;

/** How old a plan's reading of the weather is. */
export interface WeatherAge {
  /** Time of day as typed, `10:40`. */
  readonly taken: string;
  /** Minutes since then, on the plan's own day; null on any other day. */
  readonly minutes: number | null;
  readonly stale: boolean;
}

/**
 * The fields of a plan that say that its weather was read just now: a reading of today belongs to a plan of today.
 *
 * @returns by field path
 */
export function readNow(plan: Raw, now: Date): Readonly<Record<string, string>> {
  const date = plan["date"] === dayOf(now) ? {} : { date: dayOf(now) };
  return { ...date, "weather.taken": timeOfDay(now) };
}

/**
 * The age of the weather that a plan was given. On another day than the plan's it is a forecast or a memory, not a reading to be
 * renewed, so it has no age.
 *
 * @param plan the plan's document
 * @param now the device's clock
 * @returns null where no time was given
 */
export function weatherAge(plan: Raw, now: Date): WeatherAge | null {
  const weather = plan["weather"] as { readonly taken?: unknown } | undefined;
  const taken = weather?.taken;
  const parts = typeof taken === "string" ? /^(\d{1,2}):(\d\d)/.exec(taken) : null;
  if (parts === null || typeof taken !== "string") return null;
  if (plan["date"] !== dayOf(now)) return { taken, minutes: null, stale: false };
  const minutes = now.getHours() * 60 + now.getMinutes() - (Number(parts[1]) * 60 + Number(parts[2]));
  // a reading of this evening, looked at this morning, is a slip or a forecast
  if (minutes < 0) return { taken, minutes: null, stale: false };
  return { taken, minutes, stale: minutes > STALE_AFTER };
}

/** Whether the wind must be read before it counts at the pad: there, a reading of another day is none. */
export function wantsReading(age: WeatherAge | null): boolean {
  return age === null || age.minutes === null || age.stale;
}

/** When the weather was read, for a sentence: `12 min ago`, `at 10:40`. */
export function readWords(age: WeatherAge): string {
  return age.minutes === null ? `at ${age.taken}` : ageWords(age);
}

/** `12 min ago`, `10:40`, `3 h ago`. */
export function ageWords({ taken, minutes }: WeatherAge): string {
  if (minutes === null) return taken;
  if (minutes < 1) return "just now";
  return minutes < 100 ? `${minutes}\u202fmin ago` : `${Math.round(minutes / 60)}\u202fh ago`;
}
