import { expect, test } from "vitest";
import { nearestName } from "./nearest.js";

test("nearestName() finds what was probably meant, or nothing", () => {
  const known = ["balanceWithoutMotor", "massWithoutMotor", "length", "statedCp"];
  expect(nearestName("balanceWithoutMotr", known)).toBe("balanceWithoutMotor");
  expect(nearestName("LENGTH", known)).toBe("length");
  expect(nearestName("mass", known)).toBe("massWithoutMotor");
  expect(nearestName("cp", known)).toBe("statedCp");
  expect(nearestName("colour", known)).toBeUndefined();
  expect(nearestName("", known)).toBeUndefined();
});
