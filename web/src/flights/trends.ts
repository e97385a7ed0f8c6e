import type { FlownDelay } from "@delaywright/engine";
import type { FlightLibrary } from "../compute/debrief/protocol.js";
import type { TrendDelay } from "../pictures/trend-delays.js";
import type { TrendFactor } from "../pictures/trend-factors.js";

export type PastFlight = FlightLibrary["past"][number];

/** Half of a 90 % interval in sigmas. @source memory: the 95 % point of the normal distribution */
const HALF = 1.645;

/** Oldest first; flights without a day come last, as they stand. */
export function inOrder(past: readonly PastFlight[]): readonly PastFlight[] {
  const key = ({ flown }: PastFlight): string => flown ?? "9999";
  return past.toSorted((one, other) => (key(one) < key(other) ? -1 : key(one) > key(other) ? 1 : 0));
}

/** Flights by the name of their rocket or motor type, sorted; those that name none are left out. */
export function grouped(
  past: readonly PastFlight[],
  by: "rocket" | "motor",
): readonly (readonly [string, readonly PastFlight[]])[] {
  const groups = new Map<string, PastFlight[]>();
  for (const flight of past) {
    const name = flight[by];
    if (name === null) continue;
    const group = groups.get(name);
    if (group === undefined) groups.set(name, [flight]);
    else group.push(flight);
  }
  return [...groups].toSorted(([one], [other]) => one.localeCompare(other, "en", { numeric: true }));
}

/** The factor that each flight told, in their order. */
export function factorsOf(flights: readonly PastFlight[], of: "drag" | "impulse"): readonly TrendFactor[] {
  return flights.flatMap((flight, i) => {
    const told = flight[of];
    if (told === null) return [];
    const { file, name, flown, excluded } = flight;
    const label = flown === null ? String(i + 1) : flown.slice(0, 10);
    return [{ key: file, label, name, ...told, excluded: excluded !== null }];
  });
}

/** The delay that each flight was set to and burnt, where both are known. */
export function delaysOf(flights: readonly PastFlight[]): readonly TrendDelay[] {
  return flights.flatMap(({ file, name, set, delay, excluded }) => {
    const ends = endsOf(delay);
    if (set === null || ends === null) return [];
    return [{ key: file, name, set, ...ends, excluded: excluded !== null }];
  });
}

function endsOf(delay: FlownDelay): Pick<TrendDelay, "flown" | "low" | "high"> | null {
  switch (delay.kind) {
    case "unknown":
      return null;
    case "seen":
      return {
        flown: delay.delay,
        low: delay.delay - HALF * delay.error,
        high: delay.delay + HALF * delay.error,
      };
    case "at-least":
      return { flown: delay.delay, low: delay.delay, high: Number.POSITIVE_INFINITY };
    case "at-most":
      return { flown: delay.delay, low: Number.NEGATIVE_INFINITY, high: delay.delay };
  }
}
