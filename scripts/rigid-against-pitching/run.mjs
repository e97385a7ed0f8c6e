// The rigid ensemble against the pitching one, recorded beside this file:  node scripts/rigid-against-pitching/run.mjs [PLANS] [DRAWS] [SEED] [OUT]

import { spawnSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const here = dirname(fileURLToPath(import.meta.url));
const [plans = "100", draws = "128", seed = "1", out = join(here, "results.json")] = process.argv.slice(2);
const bundle = join(mkdtempSync(join(tmpdir(), "rigid-against-pitching-")), "plans-compared.mjs");
await build({
  entryPoints: [join(here, "plans-compared.ts")],
  outfile: bundle,
  bundle: true,
  platform: "node",
  format: "esm",
  conditions: ["source"],
  // where the drawn plans find the demo library
  define: { "import.meta.url": JSON.stringify(new URL("plans.mjs", import.meta.url).href) },
  logLevel: "warning",
});
const run = spawnSync(process.execPath, [bundle, plans, draws, seed, out], { stdio: "inherit" });
process.exit(run.status ?? 1);
