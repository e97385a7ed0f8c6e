import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Io } from "../src/io/io.js";
import { type MemoryIo, memoryIo } from "../src/io/memory.js";
import { run } from "../src/run.js";

/** A document that tests may bend. */
// biome-ignore lint/suspicious/noExplicitAny: tests reach into documents of every kind
export type Loose = any;

/** An invented plan with its documents, for tests; the examples have their own. */
export const demoFolder = fileURLToPath(new URL("demo/", import.meta.url));

/** The demo's documents, each of them bent by the function under its name; a name of its own adds a document. */
export function demoFiles(bend: Readonly<Record<string, (document: Loose) => unknown>> = {}): Record<string, string> {
  const names = readdirSync(demoFolder).filter((name) => name.endsWith(".json"));
  const files = Object.fromEntries(names.map((name) => [name, readFileSync(`${demoFolder}${name}`, "utf8")]));
  for (const [name, change] of Object.entries(bend)) {
    const document: Loose = files[name] === undefined ? {} : JSON.parse(files[name]);
    files[name] = JSON.stringify(change(document) ?? document);
  }
  return files;
}

/** Runs the words of a command over files in memory. */
export async function runOver(
  files: Readonly<Record<string, string | Uint8Array>>,
  words: readonly string[],
  changed: Partial<Io> = {},
): Promise<MemoryIo["written"] & { code: number; json: () => Loose }> {
  const io = memoryIo(files, changed);
  const code = await run(words, io, { version: "0.0.0-test", debug: false });
  return { ...io.written, code, json: () => JSON.parse(io.written.out) };
}

/** Fewer draws than a flyer would take: what is tested here is told, not how good it is. */
export const few = ["--draws", "64"];

/** A motor in hand of the demo, cut to a depth. */
export function bag(after: string): Loose {
  return {
    kind: "motor-in-hand",
    version: 1,
    name: "Bag 3",
    type: "demo-h150.motor.json",
    label: "3",
    readings: [{ when: "2026-05-02T10:12", before: "22.2 mm", after }],
  };
}

/** The demo on a motor in hand. */
export function inHand(after: string, more: Readonly<Record<string, (document: Loose) => unknown>> = {}) {
  return demoFiles({
    "bag-3.json": () => bag(after),
    "plan.json": (plan) => {
      plan.motor = "bag-3.json";
    },
    ...more,
  });
}
