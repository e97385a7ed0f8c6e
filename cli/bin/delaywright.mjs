#!/usr/bin/env node
// In a checkout the bundle, and for `app` the app, are built when missing or stale; in a published package they are there.
import { existsSync, readdirSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";

const cli = fileURLToPath(new URL("..", import.meta.url));
const root = fileURLToPath(new URL("../..", import.meta.url));

/** What is built, from which workspaces, and by what. */
const builds = {
  cli: {
    made: [`${cli}dist/delaywright.mjs`, `${cli}dist/worker.mjs`],
    from: ["engine", "documents", "cli"],
    by: `${cli}build.mjs`,
    build: async () => (await import("../build.mjs")).buildBundle(),
  },
  app: {
    made: [`${root}web/dist/index.html`],
    from: ["engine", "documents", "web"],
    also: [`${root}web/index.html`, `${root}web/vite.config.ts`],
    by: `${root}web/build.mjs`,
    build: async () => (await import("../../web/build.mjs")).buildApp(),
  },
};

/** Time of a file, or 0 where there is none. */
const timeOf = (path) => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;

/** The newest of a folder and all in it but tests. The folders count too: their time changes as files come and go. */
function newestIn(folder) {
  let newest = timeOf(folder);
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) newest = Math.max(newest, newestIn(path));
    else if (!/\.test\.tsx?$/.test(entry.name)) newest = Math.max(newest, timeOf(path));
  }
  return newest;
}

/** Whether something built is missing, or older than anything it is made of. */
function isStale({ made, from, also = [], by }) {
  const oldest = Math.min(...made.map(timeOf));
  if (oldest === 0 || [by, ...also].some((path) => timeOf(path) > oldest)) return true;
  return from.some(
    (workspace) => timeOf(`${root}${workspace}/package.json`) > oldest || newestIn(`${root}${workspace}/src`) > oldest,
  );
}

/** Builds what is stale; false where that fails, with its reason told. */
async function built(what) {
  const word = setTimeout(() => process.stderr.write("delaywright: building from its sources, a few seconds\n"), 1000);
  try {
    await what.build();
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

async function ready(what) {
  return !isStale(what) || (await built(what));
}

const published = !existsSync(`${cli}src/main.ts`);
const needsApp = process.argv[2] === "app" && existsSync(builds.app.by);
if (published || ((await ready(builds.cli)) && (!needsApp || (await ready(builds.app)))))
  await import("../dist/delaywright.mjs");
