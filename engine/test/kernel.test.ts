import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { compiledKernel, kernelModule } from "../../scripts/kernel.mjs";

test("the engine's compiled hot loop is what its source compiles to: `npm run kernel` writes it", async () => {
  const written = readFileSync(new URL("../src/spread/kernel-code.ts", import.meta.url), "utf8");
  expect(kernelModule(await compiledKernel())).toBe(written);
});
