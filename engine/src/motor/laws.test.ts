import fc from "fast-check";
import { expect, test } from "vitest";
import { burnOf } from "./burn.js";
import { thrustIssues } from "./checks.js";
import { prepareImpulse } from "./impulse.js";
import type { ThrustCurve } from "./motor.js";
import { motorMassAt } from "./propellant-mass.js";
import { prepareThrust } from "./thrust-curve.js";

const anyCurve: fc.Arbitrary<ThrustCurve> = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 0, max: 1_000 })), {
    minLength: 2,
    maxLength: 20,
  })
  .filter((points) => points.some(([, thrust]) => thrust > 0))
  .map((points) => {
    let milliseconds = -1;
    const times = points.map(([gap]) => {
      milliseconds += gap;
      return milliseconds / 1_000;
    });
    return { times, thrusts: points.map(([, thrust]) => thrust) };
  });
const anyTime = fc.double({ min: -1, max: 12, noNaN: true });

function thrustByPlainScan({ times, thrusts }: ThrustCurve, time: number): number {
  for (let i = 1; i < times.length; i++) {
    if (time < times[i - 1]! || time > times[i]!) continue;
    const part = (time - times[i - 1]!) / (times[i]! - times[i - 1]!);
    return thrusts[i - 1]! + (thrusts[i]! - thrusts[i - 1]!) * part;
  }
  return 0;
}

test("prepareThrust() agrees with a plain scan at any time", () => {
  fc.assert(
    fc.property(anyCurve, anyTime, (curve, time) => {
      // Two ways to write the same line, apart by roundings of at most 1000 N.
      expect(Math.abs(prepareThrust(curve)(time) - thrustByPlainScan(curve, time))).toBeLessThan(1e-9);
    }),
  );
});

test("prepareThrust() gives each point exactly, the ends included", () => {
  fc.assert(
    fc.property(anyCurve, (curve) => {
      const thrustAt = prepareThrust(curve);
      expect(curve.times.map(thrustAt)).toEqual(curve.thrusts);
    }),
  );
});

test("prepareImpulse() is unchanged by a point added on a straight piece", () => {
  fc.assert(
    fc.property(anyCurve, fc.nat(), fc.double({ min: 0.01, max: 0.99, noNaN: true }), (curve, pick, part) => {
      const i = pick % (curve.times.length - 1);
      const time = curve.times[i]! + (curve.times[i + 1]! - curve.times[i]!) * part;
      const longer = {
        times: curve.times.toSpliced(i + 1, 0, time),
        thrusts: curve.thrusts.toSpliced(i + 1, 0, prepareThrust(curve)(time)),
      };
      const { total } = prepareImpulse(curve);
      expect(Math.abs(prepareImpulse(longer).total - total)).toBeLessThan(1e-12 * total);
      expect(Math.abs(prepareImpulse(longer).at(time) - prepareImpulse(curve).at(time))).toBeLessThan(1e-12 * total);
    }),
  );
});

test("prepareImpulse() has the thrust as its slope", () => {
  fc.assert(
    fc.property(anyCurve, fc.nat(), fc.double({ min: 0.1, max: 0.9, noNaN: true }), (curve, pick, part) => {
      const i = pick % (curve.times.length - 1);
      const piece = curve.times[i + 1]! - curve.times[i]!;
      const time = curve.times[i]! + piece * part;
      const impulse = prepareImpulse(curve);
      const slope = (impulse.at(time + piece / 20) - impulse.at(time - piece / 20)) / (piece / 10);
      // Exact for a quadratic but for rounding: 5000 N s in double precision over at least 0.1 ms.
      expect(Math.abs(slope - prepareThrust(curve)(time))).toBeLessThan(1e-6);
    }),
  );
});

test("burnOf() lies inside the curve and gives its average over the burn", () => {
  fc.assert(
    fc.property(anyCurve, (curve) => {
      const burn = burnOf(curve);
      expect(burn.start).toBeGreaterThanOrEqual(curve.times[0]!);
      expect(burn.end).toBeLessThanOrEqual(curve.times.at(-1)!);
      expect(burn.end).toBeGreaterThan(burn.start);
      expect(burn.averageThrust * burn.burnTime).toBeCloseTo(burn.totalImpulse, 6);
    }),
  );
});

test("burnOf() leaves at most 5 % of the peak outside the burn", () => {
  fc.assert(
    fc.property(anyCurve, anyTime, (curve, time) => {
      const burn = burnOf(curve);
      fc.pre(time < burn.start || time > burn.end);
      expect(prepareThrust(curve)(time)).toBeLessThanOrEqual(0.05 * burn.peak + 1e-9);
    }),
  );
});

test("motorMassAt() never rises, from the loaded mass to the mass without propellant", () => {
  fc.assert(
    fc.property(anyCurve, anyTime, fc.double({ min: 0, max: 2, noNaN: true }), (curve, time, later) => {
      const massAt = motorMassAt({ thrust: curve, loadedMass: 0.5, propellantMass: 0.3 });
      // Rounding of half a kilogram.
      expect(massAt(time + later)).toBeLessThanOrEqual(massAt(time) + 1e-15);
      expect(massAt(-1)).toBe(0.5);
      expect(massAt(100)).toBeCloseTo(0.2, 14);
    }),
  );
});

test("thrustIssues() finds nothing in any good curve", () => {
  fc.assert(fc.property(anyCurve, (curve) => thrustIssues(curve).length === 0));
});
