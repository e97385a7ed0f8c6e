import { expect, test } from "vitest";
import { syntheticLog } from "../../test/debrief/synthetic-log.js";
import { noSpread } from "../spread/drawn-values.js";
import { findEvents } from "./find-events.js";
import { fitClimb } from "./fit-climb.js";
import { flightsIn } from "./flights-in.js";
import { flightRecord } from "./make-record.js";

const spread = { ...noSpread, burnTime: 0.03 };

function logged(seed: number, kind: "clean" | "rough") {
  const { samples, flight, hints } = syntheticLog(seed, kind);
  const record = flightRecord(samples, flightsIn(samples).at(-1)!, flight.planned.air);
  return { record, events: findEvents(record, hints), flight };
}

// 500 flights of each kind: node scripts/debrief-truth/run.mjs
test.each([
  ["clean", 0.03],
  ["rough", 0.06],
] as const)("fitClimb() finds drag and impulse of %s logs, within what it says", (kind, most) => {
  let outside = 0;
  for (let seed = 300; seed < 316; seed++) {
    const { record, events, flight } = logged(seed, kind);
    const { lnDrag, lnImpulse, covariance, converged, from, to } = fitClimb(record, events, flight.planned, { spread });
    expect(converged, `${seed}`).toBe(true);
    expect(to).toBeGreaterThan(from + 1);
    const [offDrag, offImpulse] = [lnDrag - flight.lnDrag, lnImpulse - flight.lnImpulse];
    expect(Math.abs(offDrag), `${seed}`).toBeLessThan(most);
    expect(Math.abs(offImpulse), `${seed}`).toBeLessThan(most);
    // four sigmas: not once in ten thousand
    expect(Math.abs(offDrag), `${seed}`).toBeLessThan(4 * Math.sqrt(covariance[0][0]));
    expect(Math.abs(offImpulse), `${seed}`).toBeLessThan(4 * Math.sqrt(covariance[1][1]));
    if (Math.abs(offDrag) > 1.645 * Math.sqrt(covariance[0][0])) outside += 1;
    expect(covariance[0][1]).toBeCloseTo(covariance[1][0], 12);
    expect(covariance[0][1] ** 2).toBeLessThan(covariance[0][0] * covariance[1][1]);
  }
  // of sixteen 90 % intervals five or fewer miss, in 99.7 of 100 tries
  expect(outside).toBeLessThanOrEqual(5);
});

test("fitClimb() says less where less is known of the day: a mass known to 3 % hides 3 % of impulse", () => {
  const { record, events, flight } = logged(301, "clean");
  const sure = fitClimb(record, events, flight.planned, { spread });
  const unsure = fitClimb(record, events, flight.planned, { spread: { ...spread, mass: 0.03 } });
  expect(Math.sqrt(unsure.covariance[1][1])).toBeGreaterThan(0.015);
  expect(Math.sqrt(unsure.covariance[1][1])).toBeLessThan(0.04);
  expect(Math.sqrt(sure.covariance[1][1])).toBeLessThan(0.012);
  expect(Math.abs(unsure.lnDrag - sure.lnDrag)).toBeLessThan(0.02);
});

test("fitClimb() tells nothing, and does not throw, where a record has no climb", () => {
  const { record, events, flight } = logged(301, "clean");
  const nowhere = { ...events, liftOff: null };
  const short = { ...events, opening: { ...events.liftOff!, time: events.liftOff!.time + 1.2 } };
  const empty = { ...record, time: new Float64Array(), height: new Float64Array() };
  const broken = { ...record, height: record.height.map(() => Number.NaN) };
  for (const fit of [
    fitClimb(record, nowhere, flight.planned, { spread }),
    fitClimb(record, short, flight.planned, { spread }),
    fitClimb(empty, events, flight.planned, { spread }),
    fitClimb(broken, events, flight.planned, { spread }),
  ]) {
    expect(fit.converged).toBe(false);
    expect(fit.covariance[0][0]).toBe(Number.POSITIVE_INFINITY);
    expect([fit.lnDrag, fit.lnImpulse]).toEqual([0, 0]);
  }
});
