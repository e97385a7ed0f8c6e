import { expect, test } from "vitest";
import { bodyLift, cpWithBodyLift } from "./body-lift.js";
import { exampleRocket } from "./example-rocket.js";
import { cpOf, normalForceParts, slopeOf } from "./normal-force/parts.js";
import { referenceArea as areaOf, bodyPlanform } from "./outline.js";

const parts = normalForceParts(exampleRocket);
const body = bodyLift(exampleRocket);
const referenceArea = areaOf(exampleRocket.diameter);

test("bodyLift() is the body's side view with the cross-flow drag of a cylinder", () => {
  const { area, centroid } = bodyPlanform(exampleRocket);
  expect(body).toEqual({ area, at: centroid, cdc: 1.1 });
});

test("cpWithBodyLift() is the centre of pressure at zero angle and moves forward as the angle grows", () => {
  const cpAt = (alpha: number) => cpWithBodyLift({ parts, bodyLift: body, alpha, mach: 0.3, referenceArea });
  expect(cpAt(0)).toBe(cpOf(parts, 0.3));
  for (let alpha = 0; alpha < 0.5; alpha += 0.05) expect(cpAt(alpha + 0.05)).toBeLessThan(cpAt(alpha));
});

test("cpWithBodyLift() balances the moments of parts and cross-flow", () => {
  const [alpha, mach] = [0.2, 0.3];
  const cross = (body.cdc * body.area * Math.sin(alpha) ** 2) / referenceArea;
  const normal = slopeOf(parts, mach) * Math.sin(alpha);
  const balance = (normal * cpOf(parts, mach) + cross * body.at) / (normal + cross);
  expect(cpWithBodyLift({ parts, bodyLift: body, alpha, mach, referenceArea })).toBeCloseTo(balance, 12);
});
