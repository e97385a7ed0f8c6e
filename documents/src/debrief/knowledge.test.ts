import { type Learned, normalQuantile } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import { knowledge } from "./knowledge.js";

const prior = { seconds: 0.75, fraction: 0.1 };
const learned: Learned = {
  drag: { mean: Math.log(1.08), sd: 0.05 },
  impulse: { mean: 0, sd: 0.03 },
  correlation: 0.2,
  flights: { rocket: 1, motor: 2, both: 1 },
};

describe("knowledge()", () => {
  test("gives factors with their 90 % interval", () => {
    const { drag } = knowledge(learned, null, prior);
    // 5 % of a normal lie above 1.644853627 sigmas; memory
    expect(drag.factor).toBeCloseTo(1.08, 12);
    expect(drag.high).toBeCloseTo(1.08 * Math.exp(0.05 * 1.644853627), 8);
    expect(drag.low * drag.high).toBeCloseTo(1.08 * 1.08, 12);
  });

  test("gives the prior's normal range where no delay was seen", () => {
    const { delay } = knowledge(learned, 9, prior);
    expect(delay).toMatchObject({ set: 9, mean: 9 });
    // the greater of 0.75 s and a tenth of 9 s
    expect(delay?.high).toBeCloseTo(9 + 0.9 * normalQuantile(0.95), 12);
    expect(knowledge(learned, null, prior).delay).toBeNull();
  });

  test("gives the Student-t range of what was seen", () => {
    const delay = {
      mean: [0.4, 0, 0] as const,
      scale: [0, 0, 0, 0, 0, 0, 0, 0, 0],
      motorScale: 1,
      degrees: 11,
      prior,
      seen: 2,
      bounds: 0,
    };
    const range = knowledge({ ...learned, delay }, 9, prior).delay;
    expect(range?.mean).toBeCloseTo(9.4, 12);
    // t of 95 % at 11 degrees is 1.795884819 (tables; memory); the motor's own half of 0.9² s² is its scale
    expect(range?.high).toBeCloseTo(9.4 + 1.795884819 * Math.sqrt(0.5 * 0.81), 7);
    expect((range?.high ?? 0) + (range?.low ?? 0)).toBeCloseTo(18.8, 10);
  });
});
