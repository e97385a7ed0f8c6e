import {
  type Doubt,
  type Issue,
  type Loaded,
  loadAny,
  loadPlan,
  nodeDoubts,
  planToEngine,
} from "@delaywright/documents";
import { EXIT, type Io } from "../io/io.js";
import type { CheckedFile } from "../print/answer.js";
import { checkText } from "../print/check-text.js";
import { jsonText } from "../print/json.js";

/** What `delaywright check` was asked. */
export interface CheckArgs {
  readonly files: readonly string[];
  readonly json?: boolean;
}

function doubtsOf({ root, entries }: Loaded): Doubt[] {
  return [...(root === undefined ? [] : nodeDoubts(root)), ...entries.flatMap(doubtsOf)];
}

function issuesOf({ issues, entries }: Loaded): Issue[] {
  return [...issues, ...entries.flatMap(issuesOf)];
}

async function checkFile(file: string, io: Io): Promise<CheckedFile> {
  const loaded = await loadAny(file, io.files);
  const found = {
    file,
    state: loaded.state,
    kind: loaded.kind ?? null,
    issues: issuesOf(loaded),
    doubts: doubtsOf(loaded),
  };
  if (loaded.kind !== "plan" || found.issues.length > 0) return found;
  const { parts } = await loadPlan(file, io.files);
  const made = parts === undefined ? undefined : planToEngine(parts);
  if (made === undefined) return found;
  return made.ok ? { ...found, doubts: made.warnings } : { ...found, state: "invalid", issues: made.issues };
}

/** The same thing found through two files is told once. */
function tellOnce(files: readonly CheckedFile[]): CheckedFile[] {
  const told = new Set<string>();
  const once = <T extends Issue | Doubt>(list: readonly T[]): T[] =>
    list.filter((each) => {
      const key = [each.file, each.path, each.code, each.found].join("\n");
      const first = !told.has(key);
      told.add(key);
      return first;
    });
  return files.map((file) => ({ ...file, issues: once(file.issues), doubts: once(file.doubts) }));
}

/** Are these documents right? Every issue of every file, each with what is accepted and an example. */
export async function check(args: CheckArgs, io: Io): Promise<number> {
  const all: CheckedFile[] = [];
  for (const file of args.files) all.push(await checkFile(file, io));
  const files = tellOnce(all);
  io.out(args.json ? jsonText({ files }) : checkText(files));
  return all.some((file) => file.issues.length > 0 || file.state !== "ready") ? EXIT.wrongInput : EXIT.done;
}
