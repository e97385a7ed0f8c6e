import { expect, test } from "vitest";
import { noseDrag } from "../../src/rocket/drag/nose.js";
import { coneSurface, waveDrag } from "../../src/rocket/supersonic/tangent-cone.js";
import { coneFlow, worstConeDifference } from "./cone-flow.js";

const degree = Math.PI / 180;

test("coneFlow() tends to the slender cone's closed form: within 3 % at 3 degrees, closer than at 5", () => {
  for (const mach of [1.5, 2]) {
    const apart = [3, 5].map((angle) => {
      const slope = Math.tan(angle * degree);
      const slender = 2 * slope ** 2 * (Math.log(2 / (Math.sqrt(mach * mach - 1) * slope)) - 0.5);
      return Math.abs((coneFlow(mach, angle * degree)?.pressure ?? 0) / slender - 1);
    });
    expect(apart[0], `Mach ${mach}`).toBeLessThan(0.03);
    expect(apart[0]).toBeLessThan(apart[1] as number);
  }
});

test("coneFlow() reads as the charts of NACA Report 1135 do (memory)", () => {
  const rows = [
    [2, 10, 31.2],
    [2, 20, 37.8],
    [3, 20, 29.6],
  ] as const;
  for (const [mach, angle, shock] of rows)
    expect(Math.abs((coneFlow(mach, angle * degree)?.shockAngle ?? 0) / degree - shock)).toBeLessThan(0.1);
  expect(Math.abs((coneFlow(2, 10 * degree)?.pressure ?? 0) - 0.104)).toBeLessThan(0.002);
  expect(coneFlow(1.2, 25 * degree)).toBeUndefined();
});

test("waveDrag() of a cone stays within 8 % of Taylor-Maccoll, 4 to 20 degrees, Mach 1.2 to 3", () => {
  expect(worstConeDifference(waveDrag)).toBeLessThan(0.08);
});

test("noseDrag() of a cone at Mach 2 is Taylor-Maccoll's pressure on its base within 5 %", () => {
  for (const fineness of [2, 3, 5]) {
    const angle = Math.atan(0.5 / fineness);
    const exact = coneFlow(2, angle)?.pressure ?? 0;
    expect(Math.abs(noseDrag({ shape: { kind: "cone" }, length: fineness }, 1)(2) / exact - 1)).toBeLessThan(0.05);
  }
});

test("coneSurface() has the surface Mach number within 2 % where the noses of rockets use it", () => {
  for (const mach of [1.5, 2, 3])
    for (const angle of [5, 10, 15, 20]) {
      const exact = coneFlow(mach, angle * degree);
      expect(
        Math.abs(coneSurface(mach, angle * degree).mach / (exact?.mach ?? 0) - 1),
        `${mach}, ${angle}`,
      ).toBeLessThan(0.02);
    }
});
