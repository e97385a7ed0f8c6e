// What the debrief finds in synthetic records whose truth is known, recorded in results.json beside it:  node scripts/debrief-truth/run.mjs [FLIGHTS] [SEED]

import { spawnSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { bundled } from "../bundled.mjs";

const [flights = "500", seed = "1"] = process.argv.slice(2);
const bundle = await bundled(
  "scripts/debrief-truth/study.ts",
  join(mkdtempSync(join(tmpdir(), "debrief-truth-")), "study.mjs"),
);
const run = spawnSync(process.execPath, [bundle, flights, seed, join("scripts", "debrief-truth", "results.json")], {
  stdio: "inherit",
});
process.exit(run.status ?? 1);
