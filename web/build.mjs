// Builds the app into dist/, or into a folder beside it that takes its place in one step: what is being served is never half built.
import { renameSync, rmSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";

const here = dirname(fileURLToPath(import.meta.url));

/** Builds the app. A killed build leaves the old one in place. */
export async function buildApp() {
  const { build } = await import("vite");
  const fresh = join(here, `dist-${process.pid}`);
  const old = join(here, `dist-${process.pid}-old`);
  const dist = join(here, "dist");
  try {
    await build({ root: here, logLevel: "error", build: { outDir: fresh, emptyOutDir: true } });
    try {
      renameSync(dist, old);
    } catch (error) {
      if (error.code !== "ENOENT") throw error;
    }
    renameSync(fresh, dist);
  } finally {
    for (const folder of [fresh, old]) rmSync(folder, { recursive: true, force: true });
  }
}

if (process.argv[1] !== undefined && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) await buildApp();
