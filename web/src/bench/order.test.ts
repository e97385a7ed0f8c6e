import { describe, expect, test } from "vitest";
import { foremost, inOrder } from "./order.js";

const plan = (path: string, day: string | null, changed: number) => ({ path, day, changed });
const plans = [
  plan("past", "2026-04-25", 9),
  plan("long past", "2025-05-02", 8),
  plan("later", "2026-05-16", 7),
  plan("soon", "2026-05-09", 6),
  plan("no day", null, 5),
  plan("today, old", "2026-05-02", 1),
  plan("today, new", "2026-05-02", 2),
];

describe("inOrder() and foremost()", () => {
  test("today first, then what is coming, then what is past", () => {
    expect(inOrder(plans, "2026-05-02").map(({ path }) => path)).toEqual([
      "today, new",
      "today, old",
      "no day",
      "soon",
      "later",
      "past",
      "long past",
    ]);
  });

  test("one plan stands out: today's newest, else the newest", () => {
    expect(foremost(plans, "2026-05-02")).toBe("today, new");
    expect(foremost(plans, "2026-05-03")).toBe("past");
    expect(foremost([], "2026-05-03")).toBeNull();
  });
});
