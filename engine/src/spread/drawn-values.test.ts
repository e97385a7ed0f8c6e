import { expect, test } from "vitest";
import { usualSpread } from "../../test/plan.js";
import { DrawnValues } from "../flight/fast/draw.js";
import { drawnValues, noSpread, varies } from "./drawn-values.js";
import { drawNormals, drawSize } from "./draws.js";

test("drawnValues() correlates drag and thrust as the spread says, and keeps each one's own sigma", () => {
  for (const dragWithImpulse of [-0.6, 0.4, 0.95]) {
    const spread = { ...usualSpread, dragWithImpulse };
    const count = 4096;
    const sums = { dd: 0, ii: 0, di: 0 };
    const out = new DrawnValues();
    for (let draw = 0; draw < count; draw++) {
      drawnValues(spread, drawNormals(5, draw, new Float64Array(drawSize)), out);
      const [d, i] = [Math.log(out.dragScale) / spread.dragScale, Math.log(out.totalImpulse) / spread.totalImpulse];
      sums.dd += (d * d) / count;
      sums.ii += (i * i) / count;
      sums.di += (d * i) / count;
    }
    expect(sums.dd).toBeCloseTo(1, 1);
    expect(sums.ii).toBeCloseTo(1, 1);
    expect(Math.abs(sums.di / Math.sqrt(sums.dd * sums.ii) - dragWithImpulse)).toBeLessThan(0.02);
  }
});

test("drawnValues() without correlation is the same to the bit, whether it is left out or zero", () => {
  const z = drawNormals(3, 17, new Float64Array(drawSize));
  const plain = drawnValues(usualSpread, z, new DrawnValues());
  expect(drawnValues({ ...usualSpread, dragWithImpulse: 0 }, z, new DrawnValues())).toEqual(plain);
  expect(plain.totalImpulse).toBe(Math.exp(usualSpread.totalImpulse * z[4]!));
});

test("varies() is not fooled by a correlation of what does not vary", () => {
  expect(varies({ ...noSpread, dragWithImpulse: 0.5 })).toBe(false);
});
