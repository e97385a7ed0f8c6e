import { expect, test } from "vitest";
import { harnessCode } from "./harness.js";

test("harnessCode() holds the usual range's ends inside it", () => {
  const rows = [
    [5.99, "shorter-than-usual"],
    [6, "usual"],
    [10, "usual"],
    [10.01, "longer-than-usual"],
  ] as const;
  for (const [harness, code] of rows) expect(harnessCode({ harness, rocket: 2 }), `${harness} m`).toBe(code);
});
