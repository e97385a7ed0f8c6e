import { describe, expect, test } from "vitest";
import { aimItems, aimOf, firstAim, heightProblem } from "./aim.js";

describe("aimOf()", () => {
  test("reads the height as it is typed, in feet too", () => {
    expect(aimOf({ by: "nearest-height", height: "700m" })).toEqual({ by: "nearest-height", height: 700 });
    const feet = aimOf({ by: "nearest-height", height: "2000 ft" });
    expect(feet).toMatchObject({ by: "nearest-height" });
    expect(feet.by === "nearest-height" && feet.height).toBeCloseTo(609.6, 9);
  });

  test.each(["", "high", "700", "-5 m", "0 m"])("goes by odds while the height is %j", (height) => {
    expect(aimOf({ by: "nearest-height", height })).toEqual({ by: "best-odds" });
  });

  test("takes no height along where none is asked for", () => {
    expect(aimOf({ by: "highest", height: "700 m" })).toEqual({ by: "highest" });
  });
});

test("heightProblem() says what is accepted, and nothing of an empty field", () => {
  expect(heightProblem(firstAim)).toBeNull();
  expect(heightProblem({ by: "nearest-height", height: "700 m" })).toBeNull();
  expect(heightProblem({ by: "nearest-height", height: "700" })).toMatch(/“700” .*700 m/);
});

test("aimItems() offers all five aims, and names the ceiling only where the field has one", () => {
  expect(aimItems(true).map(({ id }) => id)).toEqual([
    "nearest-height",
    "highest",
    "best-odds",
    "gentlest",
    "cheapest",
  ]);
  expect(aimItems(true)[1]?.label).toBe("Highest under the ceiling");
  expect(aimItems(false)[1]?.label).toBe("Highest");
});
