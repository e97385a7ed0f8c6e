import type { SteadinessData } from "@delaywright/documents";
import { expect, test } from "vitest";
import { steadinessRules } from "./answers.js";
import type { FromDesk } from "./protocol.js";

const told = (seed: number): FromDesk => ({
  kind: "steadiness",
  job: 1,
  steadiness: { seed } as SteadinessData,
});
const read = (right: boolean): FromDesk => ({ kind: "read", job: 1, issues: [], files: [], right });

test("the flights of before stay, marked as old, until the new ones have come", () => {
  const first = steadinessRules.after(steadinessRules.first, told(1));
  expect(first).toMatchObject({ state: "ready", fresh: true, steadiness: { seed: 1 } });
  const asked = steadinessRules.asked(first);
  expect(asked).toMatchObject({ state: "waiting", fresh: false, steadiness: { seed: 1 } });
  expect(steadinessRules.after(steadinessRules.after(asked, read(true)), told(2))).toMatchObject({
    state: "ready",
    fresh: true,
    steadiness: { seed: 2 },
  });
});

test("documents with issues and a defect leave what was known, and say so", () => {
  const asked = steadinessRules.asked(steadinessRules.after(steadinessRules.first, told(1)));
  expect(steadinessRules.after(asked, read(false))).toMatchObject({ state: "wrong", fresh: false, failure: null });
  const failed = steadinessRules.after(asked, { kind: "failed", job: 1, reason: "no such row" });
  expect(failed).toMatchObject({ state: "failed", steadiness: { seed: 1 } });
  expect(failed.failure).toContain("no such row");
  expect(steadinessRules.asked(failed).failure).toBeNull();
});
