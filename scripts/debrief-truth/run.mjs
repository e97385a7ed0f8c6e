// What the debrief finds in synthetic records whose truth is known, recorded in results.json beside it:  node scripts/debrief-truth/run.mjs [FLIGHTS] [SEED]

import { spawnSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";

const [flights = "500", seed = "1"] = process.argv.slice(2);
const bundle = join(mkdtempSync(join(tmpdir(), "debrief-truth-")), "study.mjs");
await build({
  entryPoints: ["scripts/debrief-truth/study.ts"],
  outfile: bundle,
  bundle: true,
  platform: "node",
  format: "esm",
  conditions: ["source"],
});
const run = spawnSync(process.execPath, [bundle, flights, seed, join("scripts", "debrief-truth", "results.json")], {
  stdio: "inherit",
});
process.exit(run.status ?? 1);
