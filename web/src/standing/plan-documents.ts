import type { Raw } from "@delaywright/documents";
import { useMemo, useRef } from "react";
import { type Entry, useEntries } from "../store/index.js";

/** A document of a plan: in the library, or inside the plan itself. */
export interface PartOfPlan {
  /** File in which it stands. */
  readonly path: string;
  /** Field at which it stands inside that file; empty for a file of its own. */
  readonly within: string;
  readonly name: string;
  readonly raw: Raw;
}

/** The documents of a plan, as far as they are there. */
export interface PlanDocuments {
  readonly plan: Entry;
  readonly rocket: PartOfPlan | null;
  /** The motor type, also where a motor in hand is chosen. */
  readonly motor: PartOfPlan | null;
  readonly inHand: PartOfPlan | null;
  readonly tool: PartOfPlan | null;
  readonly field: PartOfPlan | null;
  readonly flyer: PartOfPlan | null;
  /** A club's rule set. */
  readonly ruleSet: PartOfPlan | null;
}

/** A field of a part of a plan, as its file names it. */
export function fieldWithin({ within }: Pick<PartOfPlan, "within">, field: string): string {
  return within === "" ? field : `${within}.${field}`;
}

function isRaw(value: unknown): value is Raw {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function partAt(parent: PartOfPlan, field: string, entries: readonly Entry[]): PartOfPlan | null {
  const value = parent.raw[field];
  if (isRaw(value)) {
    return { path: parent.path, within: fieldWithin(parent, field), name: String(value["name"] ?? ""), raw: value };
  }
  const entry = entries.find((each) => each.path === value);
  return entry?.raw == null ? null : { path: entry.path, within: "", name: entry.name, raw: entry.raw };
}

/**
 * Finds the documents that a plan refers to.
 *
 * @param path of the plan
 * @returns null where there is no such plan, or where it cannot be read at all
 */
export function documentsOf(path: string, entries: readonly Entry[]): PlanDocuments | null {
  const plan = entries.find((entry) => entry.path === path);
  if (plan?.raw == null || plan.kind !== "plan") return null;
  const root: PartOfPlan = { path, within: "", name: plan.name, raw: plan.raw };
  const named = partAt(root, "motor", entries);
  const inHand = named?.raw["kind"] === "motor-in-hand" ? named : null;
  return {
    plan,
    rocket: partAt(root, "rocket", entries),
    motor: inHand === null ? named : partAt(inHand, "type", entries),
    inHand,
    tool: partAt(root, "tool", entries),
    field: partAt(root, "field", entries),
    flyer: partAt(root, "flyer", entries),
    ruleSet: partAt(root, "ruleSet", entries),
  };
}

function samePart(one: PartOfPlan | null, other: PartOfPlan | null): boolean {
  if (one === null || other === null) return one === other;
  return one.path === other.path && one.within === other.within && one.name === other.name && one.raw === other.raw;
}

/** What was found before, where nothing that a plan refers to has changed since: a flight's log is no reason to draw a plan anew. */
export function keptDocuments(before: PlanDocuments | null, now: PlanDocuments | null): PlanDocuments | null {
  if (before === null || now === null || before.plan !== now.plan) return now;
  const { plan: _, ...parts } = now;
  const same = Object.entries(parts).every(([name, part]) => samePart(part, before[name as keyof typeof parts]));
  return same ? before : now;
}

/** As `documentsOf`, kept up to date: the same object until one of them changes. */
export function usePlanDocuments(path: string): PlanDocuments | null {
  const entries = useEntries();
  const last = useRef<PlanDocuments | null>(null);
  return useMemo(() => {
    last.current = keptDocuments(last.current, documentsOf(path, entries));
    return last.current;
  }, [path, entries]);
}
