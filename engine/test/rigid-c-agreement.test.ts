import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, expect, test } from "vitest";
import { compile, compilerName } from "../bench/c-side.js";
import { rigidInC, rigidStart, rigidToTop, topsApart } from "../bench/rigid.js";

const folder = mkdtempSync(join(tmpdir(), "rigid-c-agreement-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Both sides round differently in the last digit (one fuses products and sums); steps and the root carry that up. */
const roundingGrown = 1e-9;

test.skipIf(compilerName() === null)("rigidRates() agree with the same algorithm in C (needs gcc)", () => {
  const program = compile(fileURLToPath(new URL("../bench/rigid.c", import.meta.url)), folder);
  const start = rigidStart();
  // the body turns and its fins are canted, so that all axes count
  const turned = {
    ...start,
    state: start.state.map((value, i) => (i === 3 ? value + 2 : i > 9 ? value + 0.3 * i - 3 : value)),
  };
  for (const from of [start, turned]) {
    const one = rigidToTop(from);
    const other = rigidInC(program, from, folder)(1);
    expect(topsApart(one, other)).toBeLessThan(roundingGrown);
    expect(Math.abs(other.calls / one.calls - 1)).toBeLessThan(0.01);
  }
});
