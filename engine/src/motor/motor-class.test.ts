import { expect, test } from "vitest";
import { InputError } from "../issues.js";
import { classLimits, motorClass } from "./motor-class.js";

test("motorClass() goes on doubling beyond O, and stops at Z", () => {
  expect(motorClass(40_960.01)).toBe("P");
  expect(motorClass(1.25 * 2 ** 26)).toBe("Z");
  expect(motorClass(1e9)).toBe(">Z");
});

test.each([0, -1, Number.NaN])("motorClass() refuses %d N s", (totalImpulse) => {
  expect(() => motorClass(totalImpulse)).toThrow(InputError);
  expect(() => motorClass(totalImpulse)).toThrow(/> 0 N s accepted/);
});

test("classLimits() is where motorClass() changes", () => {
  for (const name of ["1/8A", "1/4A", "1/2A", ..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"]) {
    const { above, upTo } = classLimits(name)!;
    expect(motorClass(upTo)).toBe(name);
    expect(motorClass(upTo * 1.000_001)).not.toBe(name);
    if (above > 0) expect(motorClass(above)).not.toBe(name);
    expect(motorClass(above + upTo * 1e-9)).toBe(name);
  }
  expect(classLimits("AA")).toBeNull();
});
