// Runs the dependency rules, and fails where the tool read no modules: it then passes without having looked.
import { spawnSync } from "node:child_process";

const run = spawnSync(
  process.execPath,
  [
    "node_modules/dependency-cruiser/bin/dependency-cruise.mjs",
    "engine/src",
    "documents/src",
    "cli/src",
    "web/src",
    "--config",
    ".dependency-cruiser.cjs",
    "--output-type",
    "err-long",
  ],
  { encoding: "utf8" },
);
process.stdout.write(run.stdout);
process.stderr.write(run.stderr);
const modules = Number(/(\d+) modules/.exec(run.stdout)?.[1] ?? 0);
if (modules < 50) {
  console.error(`dependency rules: only ${modules} modules read, 50 or more expected; is TypeScript 6 installed?`);
  process.exit(1);
}
process.exit(run.status ?? 1);
