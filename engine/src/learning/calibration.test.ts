import { expect, test } from "vitest";
import { wilsonInterval } from "../math/proportion.js";
import { calibration, type PastOdds } from "./calibration.js";

const past: PastOdds[] = [
  { odds: 0.91, clean: true, top: 600, topBand: [550, 650] },
  { odds: 0.94, clean: true, top: 700, topBand: [550, 650] },
  { odds: 0.9, clean: false, top: 640, topBand: [550, 640] },
  { odds: 0.42, clean: false },
  { odds: 1, clean: true },
];

test("calibration() puts every flight into one bin and gives its Wilson interval", () => {
  const { bins, all, tops } = calibration(past);
  expect(bins.reduce((sum, { flights }) => sum + flights, 0)).toBe(5);
  const ninety = bins.find(({ from }) => from === 0.9)!;
  expect(ninety).toMatchObject({ to: 0.95, flights: 3, times: 2, interval: wilsonInterval(2, 3) });
  expect(ninety.given).toBeCloseTo((0.91 + 0.94 + 0.9) / 3, 12);
  expect(bins.at(-1)).toMatchObject({ to: 1, flights: 1, share: 1 });
  expect(all).toMatchObject({ flights: 5, times: 3, share: 0.6 });
  expect(tops).toMatchObject({ flights: 3, times: 2 });
});

test("calibration() of nothing says nothing", () => {
  const { all, tops } = calibration([]);
  expect(all).toMatchObject({ flights: 0, share: null, given: null, interval: [0, 1] });
  expect(tops.share).toBeNull();
});
