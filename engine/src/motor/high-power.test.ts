import { expect, test } from "vitest";
import { certificationLevel } from "./high-power.js";

test("certificationLevel() is null above O and for what is no class", () => {
  for (const name of ["P", "Z", ">Z", "AA", "", "h"]) expect(certificationLevel(name)).toBeNull();
});

test("certificationLevel() asks for none by class up to G", () => {
  for (const name of ["1/8A", "1/4A", "1/2A", ..."ABCDEFG"]) expect(certificationLevel(name)).toBe(0);
});
