// Brute-force odds of one example, recorded beside it:  node scripts/monte-carlo/run.mjs EXAMPLE [DRAWS] [SEED]

import { spawnSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { bundled } from "../bundled.mjs";

const [example, draws = "100000", seed = "1"] = process.argv.slice(2);
if (example === undefined) {
  console.error("usage: node scripts/monte-carlo/run.mjs EXAMPLE [DRAWS] [SEED], for example worked-example");
  process.exit(2);
}
const bundle = await bundled(
  "scripts/monte-carlo/flights.ts",
  join(mkdtempSync(join(tmpdir(), "monte-carlo-")), "flights.mjs"),
);
const folder = join("cli", "examples", example);
const run = spawnSync(
  process.execPath,
  [bundle, join(folder, "plan.json"), draws, seed, join(folder, `monte-carlo-seed-${seed}.json`)],
  {
    stdio: "inherit",
  },
);
process.exit(run.status ?? 1);
