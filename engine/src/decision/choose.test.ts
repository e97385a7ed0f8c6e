import { expect, test } from "vitest";
import { usualLimits } from "../../test/plan.js";
import { settingWith } from "../../test/settings.js";
import { mostFiresFirst } from "../rules/delay-rules.js";
import { choose } from "./choose.js";

test("choose() takes the highest clean odds among the settings that hold", () => {
  const settings = [
    settingWith(14, { lateFast: 0.05, holds: 0.98 }),
    settingWith(12, { lateFast: 0.15, holds: 0.991 }),
    settingWith(10, { earlyFast: 0.3, holds: 0.999 }),
  ];
  expect(choose(settings, usualLimits)).toEqual({ index: 1, why: "best-odds" });
  // at the least itself it holds
  expect(choose([settingWith(14, { lateFast: 0.05, holds: 0.99 }), ...settings.slice(1)], usualLimits).index).toBe(0);
});

test("choose() does not ask for the least clean odds: below them the best is still the delay to cut", () => {
  const settings = [settingWith(14, { lateFast: 0.7 }), settingWith(12, { earlyFast: 0.6 })];
  expect(choose(settings, usualLimits)).toEqual({ index: 1, why: "best-odds" });
});

test("choose() takes the setting that holds most often where none holds, whatever its clean odds", () => {
  const settings = [
    settingWith(14, { lateFast: 0.05, holds: 0.9 }),
    settingWith(12, { earlyFast: 0.5, holds: 0.95 }),
    settingWith(10, { earlyFast: 0.9, holds: 0.5 }),
  ];
  expect(choose(settings, usualLimits)).toEqual({ index: 1, why: "none-holds" });
});

test("choose() breaks a tie within sampling error by fewer low and grounded openings", () => {
  const settings = [
    settingWith(14, { lateFast: 0.05, low: 0.05 }),
    settingWith(12, { lateFast: 0.105 }),
    settingWith(10, { earlyFast: 0.3 }),
  ];
  expect(choose(settings, usualLimits)).toEqual({ index: 1, why: "tie-fewer-low" });
  // no tie beyond the error
  expect(choose([settings[0]!, settingWith(12, { lateFast: 0.13 })], usualLimits)).toEqual({
    index: 0,
    why: "best-odds",
  });
});

test("choose() breaks what is left of a tie by the shorter delay, and at home by the longer", () => {
  const settings = [
    settingWith(14, { lateFast: 0.1 }),
    settingWith(12, { lateFast: 0.105 }),
    settingWith(10, { earlyFast: 0.108 }),
    settingWith(8, { earlyFast: 0.4 }),
  ];
  expect(choose(settings, usualLimits)).toEqual({ index: 2, why: "tie-shorter" });
  expect(choose(settings, usualLimits, "longer").index).toBe(0);
});

test("choose() with one setting names it the only one", () => {
  expect(choose([settingWith(7, { earlyFast: 0.1 })], usualLimits)).toEqual({ index: 0, why: "only-setting" });
  expect(choose([settingWith(7, { holds: 0.1 })], usualLimits)).toEqual({ index: 0, why: "only-setting" });
});

test("choose() lets a back-up charge fire before the electronics no more often than allowed", () => {
  const settings = [
    settingWith(14, { lateFast: 0.3 }, { firesFirst: 0.001 }),
    settingWith(12, { lateFast: 0.1 }, { firesFirst: mostFiresFirst }),
    settingWith(10, {}, { firesFirst: mostFiresFirst + 0.001 }),
  ];
  expect(choose(settings, usualLimits)).toEqual({ index: 1, why: "after-electronics" });
  // all fire first: the one that does so least
  const early = settings.map((s, i) => ({ ...s, firesFirst: 0.3 + 0.1 * i }));
  expect(choose(early, usualLimits).index).toBe(0);
  // the holding ones come first of all
  const weak = [settingWith(14, { holds: 0.5 }, { firesFirst: 0 }), settingWith(12, {}, { firesFirst: 0.2 })];
  expect(choose(weak, usualLimits).index).toBe(1);
});
