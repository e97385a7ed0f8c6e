import { expect, test } from "vitest";
import { cpOf, normalForceParts, slopeOf } from "../../src/rocket/normal-force/parts.js";
import { exampleA, exampleB, partRows, totalRows } from "./examples.js";

const rocketOf = { A: exampleA, B: exampleB };
/** Relative, as the source states; it prints seven decimals. */
const TOLERANCE = 1e-6;
const near = (found: number, printed: number, what: string) =>
  expect(Math.abs(found - printed), what).toBeLessThanOrEqual(TOLERANCE * Math.abs(printed));

test("normalForceParts() gives the parts of examples A and B (SOURCE.md)", () => {
  expect(partRows).toHaveLength(5);
  for (const row of partRows) {
    const part = normalForceParts(rocketOf[row.of])[row.index];
    near(part?.slope ?? Number.NaN, row.slope, `${row.of} ${row.part} slope`);
    near(part?.at ?? Number.NaN, row.at, `${row.of} ${row.part} place`);
  }
});

test("cpOf() and slopeOf() give the totals of examples A and B, A with the exact ogive (SOURCE.md)", () => {
  expect(totalRows).toHaveLength(2);
  for (const row of totalRows) {
    const parts = normalForceParts(rocketOf[row.of]);
    near(slopeOf(parts, 0), row.slope, `${row.of} slope`);
    near(cpOf(parts, 0), row.at, `${row.of} place`);
  }
});

test("cpOf() gives example A's total with the handbook's rounded ogive, 0.466 of its length (SOURCE.md)", () => {
  const [nose, fins] = normalForceParts(exampleA);
  if (!nose || !fins) throw new Error("example A has a nose and fins");
  near(cpOf([{ ...nose, cpAt: () => 0.466 * 0.3 }, fins], 0), 1.2218881, "A with 0.1398 m");
});

test("slopeAt() gives example A's fins at Mach 0.6 in Diederich's form, at the same place (SOURCE.md)", () => {
  const fins = normalForceParts(exampleA)[1];
  near(fins?.slopeAt(0.6) ?? Number.NaN, 15.886774, "slope");
  near(fins?.cpAt(0.6) ?? Number.NaN, 1.3633333, "place");
});

test("slopeOf() scales with the reference area: example B on 0.075 m (SOURCE.md)", () => {
  const parts = normalForceParts(exampleB);
  near(slopeOf(parts, 0) * (0.054 / 0.075) ** 2, 21.5649524, "slope");
});
