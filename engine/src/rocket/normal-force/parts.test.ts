import fc from "fast-check";
import { expect, test } from "vitest";
import { exampleRocket } from "../example-rocket.js";
import { referenceArea } from "../outline.js";
import type { FinSet, Rocket } from "../rocket.js";
import { cpOf, normalForceParts, slopeOf } from "./parts.js";

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const rockets: fc.Arbitrary<Rocket> = fc
  .record({
    diameter: size(0.03, 0.2),
    slender: size(8, 30),
    noseCalibres: size(1, 5),
    root: size(1, 3),
    tip: size(0.2, 1),
    span: size(0.5, 2),
    count: fc.integer({ min: 3, max: 9 }),
  })
  .map(({ diameter, slender, noseCalibres, root, tip, span, count }) => {
    const length = diameter * slender;
    const fins: FinSet = {
      shape: { kind: "trapezoid", root: root * diameter, tip: tip * diameter, span: span * diameter, sweep: 0 },
      count,
      at: length - root * diameter,
      thickness: 0.003,
      leadingEdge: "round",
      trailingEdge: "square",
    };
    return {
      ...exampleRocket,
      diameter,
      length,
      nose: { shape: { kind: "ogive" }, length: noseCalibres * diameter },
      finSets: [fins],
    };
  });

function scaled(rocket: Rocket, factor: number): Rocket {
  const { nose, transitions, finSets } = rocket;
  return {
    ...rocket,
    diameter: rocket.diameter * factor,
    length: rocket.length * factor,
    nose: { ...nose, length: nose.length * factor },
    transitions: transitions.map(({ at, length, aftDiameter }) => ({
      at: at * factor,
      length: length * factor,
      aftDiameter: aftDiameter * factor,
    })),
    finSets: finSets.map((fins) => {
      if (fins.shape.kind !== "trapezoid") throw new Error("only trapezoids here");
      const { root, tip, span, sweep } = fins.shape;
      const shape = {
        kind: "trapezoid" as const,
        root: root * factor,
        tip: tip * factor,
        span: span * factor,
        sweep: sweep * factor,
      };
      return { ...fins, shape, at: fins.at * factor };
    }),
  };
}

const machs = size(0, 4);

test("cpOf() lies between nose and tail, and slopeOf() is positive, at every Mach number", () => {
  fc.assert(
    fc.property(rockets, machs, (rocket, mach) => {
      const parts = normalForceParts(rocket);
      expect(slopeOf(parts, mach)).toBeGreaterThan(2);
      expect(cpOf(parts, mach)).toBeGreaterThan(0);
      expect(cpOf(parts, mach)).toBeLessThan(rocket.length);
    }),
  );
});

test("slopeOf() and cpOf() have no jump over Mach 0 to 3", () => {
  fc.assert(
    fc.property(rockets, size(0, 3), (rocket, mach) => {
      const parts = normalForceParts(rocket);
      const h = 1e-4;
      expect(Math.abs(slopeOf(parts, mach + h) / slopeOf(parts, mach) - 1)).toBeLessThan(3e-3);
      expect(Math.abs(cpOf(parts, mach + h) - cpOf(parts, mach)) / rocket.length).toBeLessThan(1e-3);
    }),
  );
});

test("cpOf() scales with the rocket and slopeOf() does not change", () => {
  fc.assert(
    fc.property(rockets, size(0.1, 10), machs, (rocket, factor, mach) => {
      const [one, other] = [normalForceParts(rocket), normalForceParts(scaled(rocket, factor))];
      expect(cpOf(other, mach) / cpOf(one, mach)).toBeCloseTo(factor, 8);
      expect(slopeOf(other, mach) / slopeOf(one, mach)).toBeCloseTo(1, 8);
    }),
  );
});

test("cpOf() moves aft when a fin grows in span", () => {
  const [fins] = exampleRocket.finSets;
  if (fins?.shape.kind !== "trapezoid") throw new Error("the example has trapezoid fins");
  const wider = { ...exampleRocket, finSets: [{ ...fins, shape: { ...fins.shape, span: 0.11 } }] };
  expect(cpOf(normalForceParts(wider), 0)).toBeGreaterThan(cpOf(normalForceParts(exampleRocket), 0));
});

test("cpOf() of the shorter fins of the pitching reference flight (f), span 0.075 m, is 1.147428 m", () => {
  const [fins] = exampleRocket.finSets;
  if (fins?.shape.kind !== "trapezoid") throw new Error("the example has trapezoid fins");
  const shorter = { ...exampleRocket, finSets: [{ ...fins, shape: { ...fins.shape, span: 0.075 } }] };
  // six decimals printed
  expect(Math.abs(cpOf(normalForceParts(shorter), 0) - 1.147428)).toBeLessThan(5e-7);
});

test("normalForceParts() gives stiffness and damping of the pitching check values (closed form, 1e-8)", () => {
  const parts = normalForceParts(exampleRocket);
  const [speed, density, balance] = [100, 1.225, 0.9898244179];
  const area = referenceArea(exampleRocket.diameter);
  const stiffness = 0.5 * density * speed ** 2 * area * slopeOf(parts, 0) * (cpOf(parts, 0) - balance);
  const arms = parts.reduce((sum, part) => sum + part.slope * (part.at - balance) ** 2, 0);
  expect(Math.abs(stiffness / 84.11481267 - 1)).toBeLessThan(1e-8);
  expect(Math.abs((0.5 * density * speed * area * arms) / 0.7503563841 - 1)).toBeLessThan(1e-8);
});

test("normalForceParts() counts a ring of two fins as nothing", () => {
  const [fins] = exampleRocket.finSets;
  if (!fins) throw new Error("the example has fins");
  const parts = normalForceParts({ ...exampleRocket, finSets: [{ ...fins, count: 2 }] });
  expect(parts[1]?.slope).toBe(0);
  expect(cpOf(parts, 0)).toBe(parts[0]?.at);
});

test("normalForceParts() leaves out a transition that changes nothing", () => {
  const plain = { ...exampleRocket, transitions: [{ at: 0.6, length: 0.1, aftDiameter: 0.066 }] };
  expect(normalForceParts(plain).map((part) => part.kind)).toEqual(["nose", "fins"]);
});
