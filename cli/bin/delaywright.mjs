#!/usr/bin/env node
// In a checkout the bundle is built when it is missing or stale; in a published package it is there.
import { existsSync, readdirSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";

const cli = fileURLToPath(new URL("..", import.meta.url));
const root = fileURLToPath(new URL("../..", import.meta.url));
const started = [`${cli}dist/delaywright.mjs`, `${cli}dist/worker.mjs`];

/** Time of a file, or 0 where there is none. */
const timeOf = (path) => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;

/** The newest of a folder and all in it but tests. The folders count too: their time changes as files come and go. */
function newestIn(folder) {
  let newest = timeOf(folder);
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) newest = Math.max(newest, newestIn(path));
    else if (!entry.name.endsWith(".test.ts")) newest = Math.max(newest, timeOf(path));
  }
  return newest;
}

/** Whether the bundle is missing, or older than anything it is made of. */
function isStale() {
  const oldest = Math.min(...started.map(timeOf));
  if (oldest === 0 || timeOf(`${cli}build.mjs`) > oldest) return true;
  return ["engine", "documents", "cli"].some(
    (workspace) => timeOf(`${root}${workspace}/package.json`) > oldest || newestIn(`${root}${workspace}/src`) > oldest,
  );
}

/** Builds the bundle; false where that fails, with its reason told. */
async function built() {
  const word = setTimeout(() => process.stderr.write("delaywright: building from its sources, a few seconds\n"), 1000);
  try {
    const { buildBundle } = await import("../build.mjs");
    await buildBundle();
    return true;
  } catch (error) {
    const reason = error?.code === "ERR_MODULE_NOT_FOUND" ? "run npm ci first" : (error?.message ?? error);
    process.stderr.write(`delaywright could not be built from its sources: ${reason}\n`);
    process.exitCode = 1;
    return false;
  } finally {
    clearTimeout(word);
  }
}

const published = !existsSync(`${cli}src/main.ts`);
if (published || !isStale() || (await built())) await import("../dist/delaywright.mjs");
