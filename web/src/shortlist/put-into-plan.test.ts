import { expect, test } from "vitest";
import { withMotor } from "./put-into-plan.js";

test("withMotor() leaves the delay that was chosen for another motor behind, and nothing else", () => {
  const plan = {
    kind: "plan",
    version: 1,
    name: "One",
    motor: "a.motor.json",
    choice: { delay: "9 s" },
    tool: "t.json",
  };
  expect(withMotor(plan, "b.motor.json")).toEqual({
    kind: "plan",
    version: 1,
    name: "One",
    motor: "b.motor.json",
    tool: "t.json",
  });
  expect(plan.choice).toEqual({ delay: "9 s" });
  expect(withMotor({ kind: "plan", version: 1 }, "b.motor.json")["motor"]).toBe("b.motor.json");
});
