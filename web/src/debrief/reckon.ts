import type { LearnedDocument, Raw } from "@delaywright/documents";
import { addDocument, changeDocuments, entryNow } from "../store/index.js";

/** What was learned, without when it was accepted. */
function plain(learned: unknown): string {
  return JSON.stringify({ ...(learned as Partial<LearnedDocument>), accepted: undefined });
}

/** Whether a plan reckons with what was learned: with the same, with something else, or not. */
export function reckonsWith(plan: Raw, learned: LearnedDocument): "same" | "other" | "no" {
  const before = plan["learned"];
  if (before === undefined) return "no";
  return plain(before) === plain(learned) ? "same" : "other";
}

function accepted(learned: LearnedDocument): LearnedDocument {
  return { ...learned, accepted: new Date().toISOString() };
}

/** Makes a plan reckon with what was learned: one step of undo. */
export function reckonWith(path: string, learned: LearnedDocument): void {
  const entry = entryNow(path);
  if (entry?.raw == null) return;
  changeDocuments("reckoned with what was learned", [{ path, raw: { ...entry.raw, learned: accepted(learned) } }]);
}

/** Makes a plan reckon with its documents alone again. */
export function forgetLearned(path: string): void {
  const entry = entryNow(path);
  if (entry?.raw == null) return;
  const { learned: _, ...rest } = entry.raw;
  changeDocuments("what was learned taken out", [{ path, raw: rest as Raw }]);
}

/**
 * Begins the next plan: the same, reckoning with what was learned, on a motor that is not spent, on a day of its own.
 *
 * @param path of the plan before
 * @returns path of the new plan
 */
export function beginNextPlan(path: string, learned: LearnedDocument): string {
  const { name = path, raw = null } = entryNow(path) ?? {};
  const { date: _, motor, choice: __, ...rest } = raw ?? {};
  const inHand = typeof motor === "string" ? entryNow(motor) : undefined;
  const whole = inHand?.kind === "motor-in-hand" ? inHand.raw?.["type"] : motor;
  const next = { ...rest, ...(whole === undefined ? {} : { motor: whole }), learned: accepted(learned) };
  return addDocument("plan", { ...next, name: `${name}, next` } as unknown as Raw);
}
