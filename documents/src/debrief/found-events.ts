import { type EventName, eventNames, type FoundEvent, type FoundEvents } from "@delaywright/engine";
import type { FoundFinding } from "./findings.js";

/** One sigma of an event that was written down without one [s], [m]: what a barometer of 10 samples a second tells; an own choice. */
const unstated = Object.freeze({ time: 0.1, height: 2 });

/** Events that were written down, as the engine takes them: lift-off is zero. */
export function foundEvents(written: readonly FoundFinding[]): FoundEvents {
  const found = (name: EventName): FoundEvent | null => {
    const one = written.find((each) => each.name === name);
    if (one === undefined) return name === "liftOff" && written.length > 0 ? atLiftOff : null;
    return {
      time: one.time,
      timeError: one.timeError ?? unstated.time,
      height: one.height ?? 0,
      heightError: one.heightError ?? unstated.height,
      reason: one.reason ?? "instrument-mark",
    };
  };
  return Object.fromEntries(eventNames.map((name) => [name, found(name)])) as unknown as FoundEvents;
}

/** Times are counted from lift-off, so it is at zero wherever anything else is known. */
const atLiftOff: FoundEvent = {
  time: 0,
  timeError: unstated.time,
  height: 0,
  heightError: unstated.height,
  reason: "instrument-mark",
};
