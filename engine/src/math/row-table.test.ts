import { expect, test } from "vitest";
import { RowTable } from "./row-table.js";

const sines = (step: number) =>
  new RowTable({
    from: -step,
    step,
    count: Math.ceil(4 / step) + 4,
    width: 2,
    fill: (x, out, at) => {
      out[at] = Math.sin(x);
      out[at + 1] = x * x;
    },
  });

test("RowTable meets its rows and parabolas, and errs with the third power of the spacing between", () => {
  const worst = (step: number) => {
    const table = sines(step);
    let most = 0;
    for (let x = 0; x <= 4; x += 0.0137) {
      const offset = table.locate(x);
      most = Math.max(most, Math.abs(table.value(offset, 0) - Math.sin(x)));
      expect(table.value(offset, 1)).toBeCloseTo(x * x, 11);
    }
    return most;
  };
  const [coarse, fine] = [worst(0.2), worst(0.1)];
  expect(fine).toBeLessThan(1e-4);
  expect(coarse / fine).toBeGreaterThan(6.5);
  const table = sines(0.1);
  expect(table.value(table.locate(1.5), 0)).toBeCloseTo(Math.sin(1.5), 14);
});

test("RowTable works out each row once, and only those that are asked for", () => {
  const asked: number[] = [];
  const table = new RowTable({
    from: 0,
    step: 1,
    count: 50,
    width: 1,
    fill: (x, out, at) => {
      asked.push(x);
      out[at] = x;
    },
  });
  table.locate(7.4);
  table.locate(7.9);
  expect(asked).toEqual([6, 7, 8, 9]);
  table.fillTo(8);
  expect([...asked].sort((a, b) => a - b)).toEqual(Array.from({ length: 11 }, (_, i) => i));
  // beyond the ends the last cell goes on
  expect(table.value(table.locate(60), 0)).toBeCloseTo(60, 9);
});
