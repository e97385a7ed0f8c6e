import { expect, test } from "vitest";
import { beaufortForce, beaufortSpeed } from "./beaufort.js";

test("beaufortForce() of the speed that a force stands for is that force", () => {
  for (let force = 0; force <= 12; force++) expect(beaufortForce(beaufortSpeed(force))).toBe(force);
});
