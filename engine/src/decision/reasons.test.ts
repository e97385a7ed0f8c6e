import { expect, test } from "vitest";
import { usualLimits } from "../../test/plan.js";
import { settingWith } from "../../test/settings.js";
import { reasonsFor } from "./reasons.js";

const good = settingWith(12, { lateFast: 0.1 });

test("reasonsFor() is silent where both odds reach their least", () => {
  expect(reasonsFor([good], 0, usualLimits, false)).toEqual({ reasons: [], helps: [] });
  expect(reasonsFor([settingWith(12, { lateFast: 0.2 })], 0, usualLimits, false).reasons).toEqual([]);
});

test("reasonsFor() names the outcomes, most weighty first, and leaves out what hardly happens", () => {
  const middle = [
    settingWith(14, { lateFast: 0.9 }),
    settingWith(12, { lateFast: 0.1, earlyFast: 0.15, low: 0.05, grounded: 0.029 }),
    settingWith(10, { earlyFast: 0.9 }),
  ];
  expect(reasonsFor(middle, 1, usualLimits, false).reasons).toEqual(["too-fast-early", "too-fast-late", "too-low"]);
});

test("reasonsFor() tells lean, and that less wind and a longer guide help", () => {
  const { reasons, helps } = reasonsFor([good, settingWith(10, { leanFast: 0.4 }), good], 1, usualLimits, false);
  expect(reasons).toEqual(["lean"]);
  expect(helps).toEqual(expect.arrayContaining(["less-wind", "longer-guide", "another-motor"]));
});

test("reasonsFor() tells a setting that does not hold, and that a stronger recovery helps", () => {
  const weak = settingWith(12, { lateFast: 0.1, holds: 0.9 });
  const { reasons, helps } = reasonsFor([good, weak, good], 1, usualLimits, false);
  expect(reasons).toContain("does-not-hold");
  expect(helps).toContain("stronger-recovery");
});

test("reasonsFor() tells a delay that no setting reaches: longer than the whole element", () => {
  const settings = [settingWith(8, { earlyFast: 0.7 }), settingWith(6, { earlyFast: 0.95 })];
  const { reasons, helps } = reasonsFor(settings, 0, usualLimits, false);
  expect(reasons).toContain("out-of-reach-longer");
  expect(helps).toEqual(expect.arrayContaining(["motor-with-longer-delay", "ballast"]));
});

test("reasonsFor() tells a delay that no setting reaches: shorter than the deepest cut", () => {
  const settings = [settingWith(14, { grounded: 0.95 }), settingWith(12, { lateFast: 0.5, low: 0.1, grounded: 0.2 })];
  const { reasons, helps } = reasonsFor(settings, 1, usualLimits, false);
  expect(reasons).toEqual(["too-fast-late", "grounded", "too-low", "out-of-reach-shorter"]);
  expect(helps).toEqual(expect.arrayContaining(["motor-with-shorter-delay", "ballast"]));
});

test("reasonsFor() offers to log a flight where early and late both spoil and the drag is a guess", () => {
  const settings = [good, settingWith(10, { earlyFast: 0.2, lateFast: 0.2 }), good];
  expect(reasonsFor(settings, 1, usualLimits, false).helps).toContain("log-a-flight");
  expect(reasonsFor(settings, 1, usualLimits, true).helps).not.toContain("log-a-flight");
});

test("reasonsFor() tells a back-up charge that fires before the electronics", () => {
  const early = settingWith(8, {}, { firesFirst: 0.4 });
  const { reasons, helps } = reasonsFor([early, early], 0, usualLimits, false);
  expect(reasons[0]).toBe("fires-before-electronics");
  expect(helps).toContain("another-motor");
});
