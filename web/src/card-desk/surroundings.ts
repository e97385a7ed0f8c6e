import type { Raw, UnitSystem } from "@delaywright/documents";
import { shownWind } from "../standing/shown-wind.js";
import type { Entry } from "../store/index.js";

/** The field and the weather of the day, as one's own plan has them. */
export interface Surroundings {
  readonly field?: Raw;
  readonly weather?: Raw;
}

function isRaw(value: unknown): value is Raw {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/**
 * What a plan says of the place and the weather.
 *
 * @param plan the plan's document
 * @param entries of the bench, among which its field stands
 */
export function surroundingsOf(plan: Raw, entries: readonly Pick<Entry, "path" | "raw">[]): Surroundings {
  const { field, weather } = plan;
  const place = isRaw(field) ? field : (entries.find(({ path }) => path === field)?.raw ?? undefined);
  return {
    ...(place === undefined ? {} : { field: place }),
    ...(isRaw(weather) ? { weather } : {}),
  };
}

/** `Larkmoor, wind 2 m/s, read 10:40`: what stands in them, in a line, the wind in the flyer's units. */
export function surroundingsWords({ field, weather }: Surroundings, units: UnitSystem): string {
  const { wind, aloft, taken } = weather ?? {};
  const words = [
    typeof field?.["name"] === "string" ? field["name"] : "no field",
    aloft !== undefined ? "winds aloft" : typeof wind === "string" ? `wind ${shownWind(wind, units)}` : "no wind given",
    typeof taken === "string" ? `read ${taken}` : "",
  ];
  return words.filter((word) => word !== "").join(", ");
}

/**
 * A plan that came from somewhere else, in the weather here.
 *
 * @param plan everything inside it
 */
export function movedTo(plan: Raw, { field, weather }: Surroundings): Raw {
  const { field: _field, weather: _weather, weatherRange: _range, ...rest } = plan;
  return { ...rest, ...(field && { field }), ...(weather && { weather }) } as Raw;
}

/**
 * The plan whose field and weather are meant where nothing was chosen: today's.
 *
 * @param today as documents write it
 */
export function plansFor(entries: readonly Entry[], today: string): readonly (Entry & { readonly raw: Raw })[] {
  const plans = entries.filter((entry): entry is Entry & { readonly raw: Raw } => {
    return entry.kind === "plan" && entry.raw !== null;
  });
  const rank = ({ raw }: Entry): number => (raw?.["date"] === today ? 0 : 1);
  return plans.toSorted((one, other) => rank(one) - rank(other) || other.savedAt - one.savedAt);
}
