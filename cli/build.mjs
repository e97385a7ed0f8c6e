// Bundles the command line and its worker into dist/: `npm run build`, and the launcher when the bundle is missing or stale.
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync, utimesSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";

const here = dirname(fileURLToPath(import.meta.url));
const root = dirname(here);
const dist = join(here, "dist");

/** The worker comes first: the bundle that starts it is renamed into place after it. */
const bundles = [
  { name: "worker.mjs", entry: join(here, "src", "worker.ts") },
  { name: "delaywright.mjs", entry: join(here, "src", "main.ts") },
];

/** What the bundle is made of. Folders count too: their time changes when a file is added or removed. */
function newestSource() {
  let newest = 0;
  const look = (path) => {
    newest = Math.max(newest, statSync(path).mtimeMs);
  };
  const walk = (folder) => {
    look(folder);
    for (const entry of readdirSync(folder, { withFileTypes: true })) {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) walk(path);
      else if (!entry.name.endsWith(".test.ts")) look(path);
    }
  };
  for (const workspace of ["engine", "documents", "cli"]) {
    walk(join(root, workspace, "src"));
    look(join(root, workspace, "package.json"));
  }
  look(fileURLToPath(import.meta.url));
  return newest;
}

/** Whether a bundle is missing, or older than anything it is made of. */
export function isStale() {
  const paths = bundles.map(({ name }) => join(dist, name));
  if (!paths.every((path) => existsSync(path))) return true;
  const newest = newestSource();
  return paths.some((path) => statSync(path).mtimeMs < newest);
}

/** What a killed build left behind, once it is too old to be another process at work. */
function sweep() {
  for (const name of readdirSync(dist)) {
    const path = join(dist, name);
    if (name.endsWith(".tmp") && Date.now() - statSync(path).mtimeMs > 600_000) rmSync(path, { force: true });
  }
}

/**
 * Builds both bundles, each under a name of its own and then renamed, so that two processes at once and a killed one do no harm.
 *
 * Their time is set to the start of the build: what is edited meanwhile makes them stale again.
 */
export async function buildBundles(folder = dist) {
  const { build } = await import("esbuild");
  mkdirSync(folder, { recursive: true });
  if (folder === dist) sweep();
  const start = new Date();
  for (const { name, entry } of bundles) {
    const temporary = join(folder, `${name}.${process.pid}.tmp`);
    await build({
      entryPoints: [entry],
      outfile: temporary,
      bundle: true,
      platform: "node",
      format: "esm",
      target: "node20",
      conditions: ["source"],
      minifySyntax: true,
      legalComments: "eof",
      banner: {
        js: 'import { createRequire as requireFrom } from "node:module";\nconst require = requireFrom(import.meta.url);',
      },
      logLevel: "silent",
    });
    utimesSync(temporary, start, start);
    renameSync(temporary, join(folder, name));
  }
}

if (process.argv[1] !== undefined && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  await buildBundles();
}
