import { execFile } from "node:child_process";
import { mkdtemp, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { DecisionData, Raw, ShortlistData } from "@delaywright/documents";

const root = fileURLToPath(new URL("../../..", import.meta.url));

/** The plan of the worked example, as the command line is given it. */
export const WORKED_PLAN = join(root, "cli/examples/worked-example/plan.json");

/** A file of the demo's documents. */
export function demoFile(name: string): string {
  return join(root, "cli/examples/larkmoor", name);
}

/** What the command line decides on a plan. Limits that are not met are an answer too. */
export function decide(plan: string): Promise<DecisionData> {
  return answerOf<DecisionData>("decide", plan);
}

/** What the command line says of the motors beside a plan, nearest to a height first. */
export function shortlist(plan: string, height: string): Promise<ShortlistData> {
  return answerOf<ShortlistData>("shortlist", plan, "--motors", dirname(plan), "--height", height);
}

function answerOf<Data>(...asked: readonly string[]): Promise<Data> {
  const launcher = join(root, "cli/bin/delaywright.mjs");
  return new Promise((resolve, reject) => {
    execFile(process.execPath, [launcher, ...asked, "--json"], { maxBuffer: 1e8 }, (error, stdout, stderr) => {
      if (stdout.startsWith("{")) resolve(JSON.parse(stdout) as Data);
      else reject(new Error(`the command line gave no answer: ${stderr || error?.message}`));
    });
  });
}

/** Documents of an export, by the names that they have among each other. */
export function documentsOf(library: string): ReadonlyMap<string, Raw> {
  const { files, documents } = JSON.parse(library) as { files: readonly string[]; documents: readonly Raw[] };
  return new Map(documents.map((document, i) => [files[i] ?? "", document]));
}

/**
 * Writes the documents of an export into a folder of their own.
 *
 * @returns the path of the plan with this name
 */
export async function unpacked(library: string, plan: string): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "delaywright-story-"));
  const documents = documentsOf(library);
  for (const [file, document] of documents) await writeFile(join(folder, file), JSON.stringify(document));
  const [found] = [...documents].find(([, { kind, name }]) => kind === "plan" && name === plan) ?? [];
  if (found === undefined) throw new Error(`no plan is called ${plan}`);
  return join(folder, found);
}
