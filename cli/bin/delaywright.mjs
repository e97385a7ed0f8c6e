#!/usr/bin/env node
// In a checkout the bundle is built when it is missing or stale; in a published package it is there.
import { existsSync } from "node:fs";
import process from "node:process";

const here = new URL("../", import.meta.url);

async function buildInCheckout() {
  const { buildBundle, isStale } = await import("../build.mjs");
  if (!isStale()) return;
  const word = setTimeout(() => process.stderr.write("delaywright: building from its sources, a few seconds\n"), 1000);
  try {
    await buildBundle();
  } finally {
    clearTimeout(word);
  }
}

let ready = true;
if (existsSync(new URL("src/main.ts", here))) {
  try {
    await buildInCheckout();
  } catch (error) {
    ready = false;
    const reason = error?.code === "ERR_MODULE_NOT_FOUND" ? "run npm ci first" : (error?.message ?? error);
    process.stderr.write(`delaywright could not be built from its sources: ${reason}\n`);
    process.exitCode = 1;
  }
}
if (ready) await import(new URL("dist/delaywright.mjs", here).href);
