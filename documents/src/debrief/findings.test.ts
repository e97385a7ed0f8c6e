import { describe, expect, test } from "vitest";
import type { Findings, WrittenFindings } from "./findings.js";
import { readFindings } from "./read-findings.js";
import { writtenFindings } from "./written-findings.js";

const findings: Findings = {
  set: 9,
  setError: 0.26,
  delay: { kind: "seen", delay: 9.4, error: 0.08 },
  openedBy: "motor",
  openedAt: 11.9,
  coast: 9.25,
  apogee: 587.5,
  outcome: "clean",
  outcomeStated: false,
  events: [
    {
      name: "liftOff",
      time: 0,
      timeError: 0.02,
      height: 0,
      heightError: 0.5,
      reason: "acceleration-rises",
      movedFrom: null,
    },
    {
      name: "burnout",
      time: 2.06,
      timeError: 0.05,
      height: 131,
      heightError: 1,
      reason: "moved-by-flyer",
      movedFrom: 2.2,
    },
  ],
  climb: {
    lnDrag: Math.log(1.08),
    lnImpulse: Math.log(0.99),
    covariance: [
      [0.0004, 0.0001],
      [0.0001, 0.0001],
    ],
    residual: 1.2,
    from: 0,
    to: 0,
    converged: true,
  },
};

describe("writtenFindings() and readFindings()", () => {
  test("there and back: every figure to the digits that are written", () => {
    const back = readFindings(writtenFindings(findings));
    expect({ ...back, climb: null }).toEqual({ ...findings, climb: null });
    expect(back.climb?.lnDrag).toBeCloseTo(findings.climb?.lnDrag ?? 0, 5);
    expect(back.climb?.covariance[0][1]).toBeCloseTo(0.0001, 8);
    expect(writtenFindings(back)).toEqual(writtenFindings(findings));
  });

  test("writes quantities with their units, and nothing of what is not known", () => {
    expect(writtenFindings(findings)).toMatchObject({
      set: "9 s",
      delay: "9.4 s",
      delayError: "0.08 s",
      apogee: "587.5 m",
      outcomeBy: "record",
      drag: { factor: 1.08, sd: 0.02 },
      scalesCorrelation: 0.5,
      residual: "1.2 m",
    });
    const nothing = readFindings({});
    expect(nothing).toMatchObject({ set: null, delay: { kind: "unknown" }, outcome: null, climb: null, events: [] });
    expect(writtenFindings(nothing)).toEqual({});
  });

  test.each([
    ["at-least", { delay: "12 s", delayIs: "at-least" }, { kind: "at-least", delay: 12 }],
    ["at-most", { delay: "8 s", delayIs: "at-most" }, { kind: "at-most", delay: 8 }],
    ["read by eye", { delay: "8 s" }, { kind: "seen", delay: 8, error: 0.2 }],
  ] as const)("reads a delay %s", (_, written, delay) => {
    expect(readFindings(written as WrittenFindings).delay).toEqual(delay);
  });

  test("a climb that tells only the impulse keeps an infinite variance of drag, and is written without it", () => {
    const half = readFindings({ impulse: { factor: 0.98, sd: 0.02 } });
    expect(half.climb?.covariance).toEqual([
      [Number.POSITIVE_INFINITY, 0],
      [0, 0.0004],
    ]);
    expect(writtenFindings(half)).toEqual({ impulse: { factor: 0.98, sd: 0.02 }, residual: "0 m" });
  });

  test("an outcome without a word on who says so is the flyer's; a reason that is none of ours is dropped", () => {
    expect(readFindings({ outcome: "low" }).outcomeStated).toBe(true);
    expect(readFindings({ outcome: "low", outcomeBy: "record" }).outcomeStated).toBe(false);
    expect(readFindings({ events: [{ name: "apogee", time: "9 s", reason: "seen by eye" }] }).events[0]).toEqual({
      name: "apogee",
      time: 9,
      timeError: null,
      height: null,
      heightError: null,
      reason: null,
      movedFrom: null,
    });
  });
});
