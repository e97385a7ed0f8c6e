import { describe, expect, test } from "vitest";
import { flatPath, Paths } from "./flat-path.js";

describe("flatPath() and Paths", () => {
  test.each([
    ["demo-76.rocket.json", "Demo", "rocket", "demo-76.rocket.json"],
    ["C:\\flights\\Demo 76.JSON", "Demo", "rocket", "demo-76.rocket.json"],
    ["a/plan.json", "Third flight!", "plan", "third-flight.plan.json"],
    ["plan.json", "", "plan", "document.plan.json"],
    ["", "", undefined, "document.json"],
    ["Möwe.json", "", "rocket", "möwe.rocket.json"],
  ] as const)("flatPath() of %s", (name, own, kind, expected) => {
    expect(flatPath(name, own, kind)).toBe(expected);
  });

  test("Paths give nothing away twice", () => {
    const paths = new Paths(["a.rocket.json"]);
    const wishes = ["a.rocket.json", "a.rocket.json", "a-2.rocket.json", "b", "b"];
    expect(wishes.map((wish) => paths.take(wish))).toEqual([
      "a-2.rocket.json",
      "a-3.rocket.json",
      "a-2-2.rocket.json",
      "b",
      "b-2",
    ]);
  });
});
