import { expect, test } from "vitest";
import { bayVolume, chargeForPressure, usualPressures } from "./ejection-charge.js";
import { judgeMotorCharge, type MotorCharge, type MotorChargeCode } from "./motor-charge.js";
import { neededCharge, separationOf } from "./separation.js";

const bay = { diameter: 0.072, length: 0.25 };
const area = (Math.PI * 0.072 ** 2) / 4;
const chargeAt = (pressure: number) => chargeForPressure({ pressure, volume: bayVolume(bay) });

function judge(motorCharge: MotorCharge, { holding, stated }: { holding?: number; stated?: number } = {}) {
  const separation = holding === undefined ? null : separationOf({ bay, holding });
  const needed = neededCharge(stated === undefined ? bay : { ...bay, pressure: stated }, separation);
  return judgeMotorCharge({ bay, motorCharge, needed, separation });
}
const finding = (judged: ReturnType<typeof judge>, code: MotorChargeCode) =>
  judged.findings.find((found) => found.code === code);
const codes = (judged: ReturnType<typeof judge>) => judged.findings.map(({ code }) => code);

test("judgeMotorCharge() says nothing of a charge that fits", () => {
  const judged = judge({ mass: chargeAt(100_000), wellHolds: chargeAt(110_000) }, { holding: 200 });
  expect(judged.findings).toEqual([]);
  expect(judged.pressure).toBeCloseTo(100_000, 6);
  expect(judged.endForce).toBeCloseTo(100_000 * area, 6);
  expect(judged.factor).toBeCloseTo((100_000 * area) / 200, 9);
});

test("judgeMotorCharge() parts the bay from factor 1 on, with margin from the margin on", () => {
  const at = (factor: number) =>
    judge({ mass: chargeAt(90_000), wellHolds: 1 }, { holding: (90_000 * area) / factor, stated: 60_000 });
  // a hard joint asks for more than the usual pressure too
  for (const [factor, expected] of [
    [0.99, ["does-not-separate", "charge-below-needed"]],
    [1.01, ["separates-below-margin", "charge-below-needed"]],
    [1.49, ["separates-below-margin", "charge-below-needed"]],
    [1.51, []],
  ] as const)
    expect(codes(at(factor)).filter((code) => code !== "needed-above-usual-pressure")).toEqual(expected);
  expect(finding(at(0.5), "does-not-separate")).toEqual({
    code: "does-not-separate",
    value: expect.closeTo(0.5, 9),
    limit: 1,
  });
  expect(finding(at(1.2), "separates-below-margin")).toEqual({
    code: "separates-below-margin",
    value: expect.closeTo(1.2, 9),
    limit: 1.5,
  });
});

test("judgeMotorCharge() tells a pressure outside the usual range, on each side", () => {
  const { least, most } = usualPressures;
  const at = (pressure: number) => judge({ mass: chargeAt(pressure), wellHolds: 1 }, { holding: 1, stated: 1000 });
  expect(codes(at(least * 0.999))).toEqual(["below-usual-pressure"]);
  expect(codes(at(least * 1.001))).toEqual([]);
  expect(codes(at(most * 0.999))).toEqual([]);
  expect(codes(at(most * 1.001))).toEqual(["above-usual-pressure"]);
  expect(finding(at(most * 2), "above-usual-pressure")!.value! / most).toBeCloseTo(2, 9);
});

test("judgeMotorCharge() tells a need above the usual range, on each side", () => {
  const { most } = usualPressures;
  const at = (stated: number) => judge({ mass: chargeAt(most * 0.999), wellHolds: 1 }, { holding: 1, stated });
  expect(codes(at(most * 0.998))).toEqual([]);
  expect(finding(at(most * 1.001), "needed-above-usual-pressure")).toMatchObject({ value: most * 1.001, limit: most });
});

test("judgeMotorCharge() holds charge and need against the well, on each side", () => {
  const at = (mass: number, wellHolds: number) =>
    codes(judge({ mass: chargeAt(mass), wellHolds: chargeAt(wellHolds) }, { holding: 1, stated: 100_000 }));
  expect(at(100_001, 100_002)).toEqual([]);
  expect(at(99_000, 100_001)).toEqual(["charge-below-needed"]);
  expect(at(99_000, 99_500)).toEqual(["needed-above-well", "charge-below-needed"]);
  expect(at(101_000, 100_500)).toEqual(["charge-above-well"]);
  const found = judge({ mass: 0.0004, wellHolds: 0.0003 }, { holding: 1, stated: 100_000 });
  expect(finding(found, "charge-above-well")).toMatchObject({ value: 0.0004, limit: 0.0003 });
  expect(finding(found, "needed-above-well")).toMatchObject({ value: chargeAt(100_000), limit: 0.0003 });
});

test("judgeMotorCharge() names what is not stated and makes up nothing for it", () => {
  const nothing = judge({});
  expect(codes(nothing)).toEqual(["charge-not-stated", "holding-not-known", "well-not-stated"]);
  expect(nothing).toMatchObject({ pressure: null, endForce: null, factor: null });
  expect(nothing.findings.every(({ value, limit }) => value === null && limit === null)).toBe(true);
  expect(judge({ mass: chargeAt(usualPressures.usual * 1.01), wellHolds: 1 })).toMatchObject({
    factor: null,
    findings: [{ code: "holding-not-known" }],
  });
});

test("judgeMotorCharge() of no charge at all does not separate; a bay that nothing holds has no factor", () => {
  expect(judge({ mass: 0, wellHolds: 1 }, { holding: 100 }).factor).toBe(0);
  expect(codes(judge({ mass: 0, wellHolds: 1 }, { holding: 100 }))).toContain("does-not-separate");
  expect(judge({ mass: 0.001, wellHolds: 1 }, { holding: 0 }).factor).toBeNull();
});
