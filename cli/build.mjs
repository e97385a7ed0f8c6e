// Bundles the command line and its worker into dist/: `npm run build`, or the launcher where the bundle is missing or stale.
import { mkdirSync, readdirSync, renameSync, rmSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";

const here = dirname(fileURLToPath(import.meta.url));
const dist = join(here, "dist");

/** What is started: the command line and its worker. Shared and lazily loaded parts become chunks named by their content. */
const entries = { delaywright: join(here, "src", "main.ts"), worker: join(here, "src", "worker.ts") };
const entryPaths = Object.keys(entries).map((name) => join(dist, `${name}.mjs`));

/** Removes what earlier and killed builds left behind, once it is too old for a process to be at work with it. */
function sweep(kept) {
  for (const name of readdirSync(dist)) {
    const path = join(dist, name);
    // another process may just have renamed or removed it
    const found = statSync(path, { throwIfNoEntry: false });
    if (found !== undefined && !kept.has(path) && Date.now() - found.mtimeMs > 600_000)
      rmSync(path, { force: true, recursive: true });
  }
}

/** Writes under a name of its own, then renames: a reader sees the old file or the new one, never half of it. */
function writeWhole(path, contents, time) {
  const temporary = `${path}.${process.pid}.tmp`;
  writeFileSync(temporary, contents);
  utimesSync(temporary, time, time);
  renameSync(temporary, path);
}

/**
 * Builds the bundle. Two processes at once and a killed one do no harm: chunks come first, what is started comes last.
 *
 * Its time is set to the start of the build: what is edited meanwhile makes it stale again.
 */
export async function buildBundle() {
  const { build } = await import("esbuild");
  const start = new Date();
  const { outputFiles } = await build({
    entryPoints: entries,
    outdir: dist,
    outExtension: { ".js": ".mjs" },
    chunkNames: "part-[hash]",
    bundle: true,
    splitting: true,
    write: false,
    platform: "node",
    format: "esm",
    target: "node20",
    conditions: ["source"],
    minifySyntax: true,
    minifyWhitespace: true,
    legalComments: "eof",
    banner: {
      js: 'import { createRequire as requireFrom } from "node:module";\nconst require = requireFrom(import.meta.url);',
    },
    logLevel: "silent",
  });
  mkdirSync(dist, { recursive: true });
  const chunks = outputFiles.filter(({ path }) => !entryPaths.includes(path));
  const started = outputFiles.filter(({ path }) => entryPaths.includes(path));
  for (const { path, contents } of [...chunks, ...started]) writeWhole(path, contents, start);
  sweep(new Set(outputFiles.map(({ path }) => path)));
}

if (process.argv[1] !== undefined && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  await buildBundle();
}
