import { loadPlan, type PlanParts } from "@delaywright/documents";
import type { PlanAnswer, Told } from "../compute/index.js";
import { storeFiles } from "./store-files.js";

const known = new WeakMap<Told, Promise<PlanParts | undefined>>();

/** The answer where it is that of the documents as they are, and all draws are in it. */
export function settledOf({ told, fresh, settling }: Pick<PlanAnswer, "told" | "fresh" | "settling">): Told | null {
  return fresh && !settling ? told : null;
}

/**
 * The documents that a settled answer is of.
 *
 * @param path of the plan
 * @param settled asked for while the documents are those that it was computed from
 */
export function partsOfAnswer(path: string, settled: Told): Promise<PlanParts | undefined> {
  const found = known.get(settled) ?? loadPlan(path, storeFiles).then(({ parts }) => parts);
  known.set(settled, found);
  return found;
}
