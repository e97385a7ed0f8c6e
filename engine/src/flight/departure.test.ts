import { expect, test } from "vitest";
import { flightD, windFrom } from "../../reference/trajectories/inputs.js";
import { exampleRocket } from "../rocket/example-rocket.js";
import { pivotAtOf, pivotWayOf } from "./departure.js";
import { fly } from "./fly.js";
import { leanAfter, leanRateAfter } from "./lean.js";
import { allOfRigid } from "./rigid/switches.js";

const fittingsAt = (...places: number[]) => places.map((at) => ({ kind: "rail button" as const, at }));

test("leanAfter() and leanRateAfter() are within 1e-3 of the closed forms with damping or growth alone", () => {
  for (const t of [0.02, 0.05]) {
    for (const growth of [-40, 40, 100]) {
      const root = Math.sqrt(Math.abs(growth)) * t;
      const [lean, rate] =
        growth > 0
          ? [(Math.cosh(root) - 1) / growth, (t * Math.sinh(root)) / root]
          : [(Math.cos(root) - 1) / growth, (t * Math.sin(root)) / root];
      expect(Math.abs(leanAfter(t, 0, growth) / lean - 1)).toBeLessThan(1e-3);
      expect(Math.abs(leanRateAfter(t, 0, growth) / rate - 1)).toBeLessThan(1e-3);
    }
    const damping = 5;
    const left = Math.exp(-damping * t);
    expect(Math.abs(leanAfter(t, damping, 0) / ((damping * t - 1 + left) / damping ** 2) - 1)).toBeLessThan(1e-3);
    expect(Math.abs(leanRateAfter(t, damping, 0) / ((1 - left) / damping) - 1)).toBeLessThan(1e-3);
  }
});

test("pivotWayOf() is the way between the outer fittings, and none where there are not two", () => {
  expect(pivotWayOf({ fittings: fittingsAt(1.4, 0.95, 1.2) })).toBeCloseTo(0.45, 12);
  expect(pivotAtOf({ fittings: fittingsAt(1.4, 0.95, 1.2) })).toBe(1.4);
  expect(pivotWayOf({ fittings: fittingsAt(1.2) })).toBe(0);
  expect(pivotWayOf({ fittings: [] })).toBe(0);
});

const days = [
  { wind: 3, from: 270, tilt: 0, travel: 1 },
  { wind: 8, from: 270, tilt: 0, travel: 1 },
  { wind: 8, from: 200, tilt: 5, travel: 1.5 },
  { wind: 6, from: 30, tilt: 3, travel: 4 },
  { wind: 0, from: 0, tilt: 8, travel: 1 },
];

/** A day of the example rocket, whose forward fitting leaves 0.45 m before its aft one. */
function inputsOf({ wind, from, tilt, travel }: (typeof days)[number], fittings = fittingsAt(0.95, 1.4)) {
  return {
    ...flightD,
    rocket: { ...exampleRocket, fittings },
    wind: windFrom(wind, from),
    guide: { travel, tilt: (tilt * Math.PI) / 180, toward: (60 * Math.PI) / 180 },
  };
}

test.each(days)(
  "fly(): the tip-off is the rigid body's swing about its aft fitting, within 5 % of what it turns by: %o",
  (day) => {
    const inputs = inputsOf(day);
    const side = (model: "pitching" | "rigid") => {
      const flight = fly(inputs, { model, handOver: false });
      const { lastFitting } = flight.events;
      if (lastFitting === null) throw new Error("the aft fitting did not leave");
      return { last: lastFitting, soon: flight.at(lastFitting.time + 0.02) };
    };
    const [quick, rigid] = [side("pitching"), side("rigid")];
    const { guideDirection: d } = fly(inputs).model;
    const apart = <S>(a: S, b: S, of: (side: S) => readonly number[]) =>
      Math.hypot(...of(a).map((v, i) => v - of(b)[i]!));
    const lean = Math.hypot(...rigid.last.axis.map((v, i) => v - d[i]!));
    const turned = Math.hypot(...rigid.soon.axis.map((v, i) => v - rigid.last.axis[i]!));
    expect(lean).toBeGreaterThan(1e-4);
    expect(Math.abs(quick.last.time - rigid.last.time)).toBeLessThan(1e-4);
    expect(apart(quick, rigid, ({ last }) => last.axis)).toBeLessThan(0.05 * lean);
    expect(apart(quick, rigid, ({ soon }) => soon.axis)).toBeLessThan(0.05 * (lean + turned) + 3e-5);
  },
);

test("fly(): held by its aft fitting a rocket turns less into the wind, and comes to the top nearer to what the rigid body does", () => {
  const [, day] = days;
  const sideways = (fittings: ReturnType<typeof fittingsAt>, model: "pitching" | "rigid", pivot = true) => {
    const inputs = inputsOf(day!, fittings);
    return fly(inputs, { model, handOver: false, rigid: { ...allOfRigid, pivot, windOverBody: false } }).events.apogee!
      .airspeed;
  };
  const two = fittingsAt(0.95, 1.4);
  const rigid = sideways(two, "rigid");
  const free = sideways(two, "rigid", false);
  expect(free - rigid).toBeGreaterThan(1);
  expect(Math.abs(sideways(two, "pitching") - rigid)).toBeLessThan(0.15 * (free - rigid));
});
