import { expect, test } from "vitest";
import { copyOf } from "./copy.js";

test("copyOf() leaves out what belongs to one physical motor, and nothing else", () => {
  const bag = {
    kind: "motor-in-hand",
    version: 1,
    name: "Bag 3",
    type: "h.motor.json",
    label: "3",
    lot: "L",
    readings: [{}],
  };
  expect(copyOf(bag)).toEqual({ kind: "motor-in-hand", version: 1, name: "Bag 3", type: "h.motor.json", lot: "L" });
  const rocket = { kind: "rocket", version: 1, name: "A", label: "x" };
  expect(copyOf(rocket)).toBe(rocket);
});
