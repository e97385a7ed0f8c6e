import fc from "fast-check";
import { expect, test } from "vitest";
import { canopyData, descentSpeed } from "./canopy.js";
import { clusterDescentSpeed } from "./canopy-cluster.js";
import { canopyForSpeed, canopySizes, spillHoleAreaLeft } from "./canopy-size.js";

const aim = fc.record({
  mass: fc.double({ min: 0.1, max: 30, noNaN: true }),
  density: fc.double({ min: 0.6, max: 1.4, noNaN: true }),
  gravity: fc.double({ min: 9.7, max: 9.9, noNaN: true }),
  speed: fc.double({ min: 2, max: 30, noNaN: true }),
});

test("canopyForSpeed() comes down at that speed: descentSpeed(), clusterDescentSpeed() and spillHoleAreaLeft() undo it", () => {
  fc.assert(
    fc.property(
      aim,
      fc.constantFrom<1 | 2 | 3>(1, 2, 3),
      fc.double({ min: 0, max: 0.9, noNaN: true }),
      fc.double({ min: 0.3, max: 2, noNaN: true }),
      (landing, count, holeRatio, cd) => {
        const diameter = canopyForSpeed(landing, { cd, count, holeRatio });
        const whole = descentSpeed({ ...landing, canopy: { shape: "conical", diameter, cd } });
        const areaLeft = spillHoleAreaLeft({ diameter, hole: holeRatio * diameter });
        expect(clusterDescentSpeed(whole / Math.sqrt(areaLeft), count) / landing.speed).toBeCloseTo(1, 11);
      },
    ),
  );
});

test("canopySizes() has a row for each type, its own coefficients' range around it", () => {
  const landing = { mass: 2, density: 1.2, gravity: 9.8, speed: 5 };
  for (const count of [1, 2, 3] as const) {
    const sizes = canopySizes(landing, count);
    expect(sizes.map(({ shape }) => shape)).toEqual(Object.keys(canopyData));
    for (const size of sizes) {
      const { cd, cdLow, cdHigh } = canopyData[size.shape];
      expect(size.count).toBe(count);
      expect(size.diameter).toBe(canopyForSpeed(landing, { cd, count }));
      expect(size.least).toBe(canopyForSpeed(landing, { cd: cdHigh, count }));
      expect(size.most).toBe(canopyForSpeed(landing, { cd: cdLow, count }));
      expect(size.least).toBeLessThan(size.most);
    }
  }
  expect(canopySizes(landing)).toEqual(canopySizes(landing, 1));
});

test("canopyForSpeed() needs smaller canopies in a cluster, but more than 1/√N of one", () => {
  const landing = { mass: 2, density: 1.2, gravity: 9.8, speed: 5 };
  const one = canopyForSpeed(landing, { cd: 0.75 });
  for (const count of [2, 3] as const) {
    const each = canopyForSpeed(landing, { cd: 0.75, count });
    expect(each).toBeLessThan(one);
    expect(each).toBeGreaterThan(one / Math.sqrt(count));
  }
});
