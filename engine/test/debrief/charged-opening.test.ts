import { expect, test } from "vitest";
import { findEvents, flightRecord, flightsIn } from "../../src/index.js";
import { syntheticLog } from "./synthetic-log.js";

/** The first opening of a clean log whose line stretch is taken to be so much longer than it is [s], and how far off it is. */
function openingOf(seed: number, longer = 0): { reason: string; miss: number } {
  const { samples, flight, truth, hints } = syntheticLog(seed, "clean");
  const record = flightRecord(samples, flightsIn(samples)[0]!, flight.planned.air);
  const { opening } = findEvents(record, { ...hints, lineStretch: hints.lineStretch! + longer });
  return { reason: opening!.reason, miss: opening!.time + record.zero - truth.opening };
}

// quiet barometers that see the flight depart from a smooth path: a charge held against that was taken for another's
test.each([331, 3096, 3218, 3263])("a charge that a quiet barometer sees opens flight %i: within 0.1 s", (seed) => {
  const { reason, miss } = openingOf(seed);
  expect(reason).toBe("pressure-spike");
  expect(Math.abs(miss)).toBeLessThan(0.1);
});

test.each([331, 3096, 3218, 3263])(
  "a charge whose canopy would open 3 s late did not open flight %i: the fall tells",
  (seed) => {
    const { reason, miss } = openingOf(seed, 3);
    expect(reason).toBe("descent-slows");
    expect(Math.abs(miss)).toBeLessThan(1.1);
  },
);

test("a canopy that opens before the top, its charge unseen, is found by the path that also fits where it opened", () => {
  const { samples, flight, truth, hints } = syntheticLog(216, "rough");
  const record = flightRecord(samples, flightsIn(samples)[0]!, flight.planned.air);
  const { opening } = findEvents(record, hints);
  expect(opening!.reason).toBe("descent-slows");
  expect(opening!.timeError).toBeLessThan(0.5);
  expect(Math.abs(opening!.time + record.zero - truth.opening)).toBeLessThan(0.3);
});
