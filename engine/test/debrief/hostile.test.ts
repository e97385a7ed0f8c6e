import { expect, test } from "vitest";
import { findEvents, flightRecord, flightsIn, type LogSamples } from "../../src/index.js";
import { randomOf } from "../random.js";

const wild = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e308, -1e308, 0, 1e-300, -5];

/** Columns of every shape, with up to a third of wild figures and a clock that jumps. */
function garbage(seed: number): LogSamples {
  const random = randomOf(seed);
  const n = Math.floor(random.between(0, 430));
  const share = random.chance(0.5) ? 0 : random.between(0, 0.3);
  const shapes: ((i: number) => number)[] = [
    () => random.uniform(),
    (i) => Math.max(0, Math.sin(i / 60)),
    (i) => i / n,
    (i) => (i > n / 2 ? 1 : 0),
    (i) => Math.sin(i / 7),
    (i) => Math.max(0, 1 - ((i - n / 2) / 60) ** 2),
  ];
  const shape = random.pick(shapes);
  const column = (scale: number): Float64Array =>
    Float64Array.from({ length: n }, (_, i) => (random.chance(share) ? random.pick(wild) : scale * shape(i)));
  return {
    time: Float64Array.from({ length: n }, (_, i) => (random.chance(0.2 * share) ? random.between(0, 1000) : i / 20)),
    ...(random.chance(0.6) ? { height: column(600) } : {}),
    ...(random.chance(0.4) ? { pressure: column(90_000) } : {}),
    ...(random.chance(0.4) ? { acceleration: column(100) } : {}),
    ...(random.chance(0.2) ? { speed: column(100) } : {}),
    marks: [],
  };
}

test("whatever the figures, a record gives finite events or a RangeError that says what is needed", () => {
  let read = 0;
  for (let seed = 1; seed <= 60; seed++) {
    const samples = garbage(seed);
    for (const span of flightsIn(samples)) {
      try {
        const events = findEvents(flightRecord(samples, span), { lineStretch: 0.5, guideTravel: 2 });
        for (const event of Object.values(events))
          if (event !== null)
            for (const x of [event.time, event.timeError, event.height]) expect(x).toSatisfy(Number.isFinite);
        read++;
      } catch (error) {
        if (!(error instanceof RangeError)) throw error;
        expect(error.message).toContain("needs 20 rows");
      }
    }
  }
  expect(read).toBeGreaterThan(10);
});
