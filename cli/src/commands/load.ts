import {
  type LoadedPlan,
  loadPlan,
  type PlanContext,
  type PlanParts,
  planToEngine,
  type ToEngine,
} from "@delaywright/documents";
import { EXIT, type Io } from "../io/io.js";
import { issuesText } from "../print/issues.js";

/** A plan that was read and made ready, or the exit code after its issues were told. */
export type ReadyPlan =
  | ({ readonly ok: true; readonly parts: PlanParts; readonly context: PlanContext } & Extract<ToEngine, { ok: true }>)
  | { readonly ok: false; readonly code: number };

/** Reads a plan with all its files; every issue of every file goes to standard error. */
export async function readyPlan(path: string, io: Io): Promise<ReadyPlan> {
  const loaded: LoadedPlan = await loadPlan(path, io.files);
  const made = loaded.parts === undefined ? undefined : planToEngine(loaded.parts);
  if (loaded.parts !== undefined && made?.ok) return { ...made, parts: loaded.parts };
  io.err(issuesText(made === undefined || made.ok ? loaded.issues : made.issues));
  return { ok: false, code: EXIT.wrongInput };
}
