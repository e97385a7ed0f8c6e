import { expect, test } from "vitest";
import { launchRules, prepSteps } from "../../src/index.js";
import { fullFacts } from "../../test/prep.js";

/** SOURCE.md, row by row: what it is, figure, unit, and the steps at which it stands. */
const rows = [
  ["misfire-wait", 60, "s", ["misfire-interlock", "misfire-wait"]],
  ["countdown", 5, "s", ["launched"]],
  ["heat-distance", 7.62, "m", ["instructions", "cut"]],
  ["igniter-at-pad", null, "", ["igniter"]],
] as const;

test("launchRules are the safety code's, and stand at their steps", () => {
  const rules = Object.values(launchRules);
  expect(rows).toHaveLength(4);
  expect(rules).toHaveLength(4);
  const steps = prepSteps({ ...fullFacts, cut: "to-make" });
  for (const [id, value, unit, at] of rows) {
    const rule = rules.find((each) => each.id === id);
    expect(rule).toMatchObject({ unit, edition: "August 2012", status: "verified" });
    // 25 ft of 0.3048 m: exact but for the last binary digit
    if (value === null) expect(rule?.value).toBeNull();
    else expect(rule?.value).toBeCloseTo(value, 12);
    expect(steps.filter(({ rule: own }) => own?.id === id).map((step) => step.id)).toEqual(at);
  }
  expect(steps.find(({ id }) => id === "misfire-wait")?.wait).toBe(60);
});
