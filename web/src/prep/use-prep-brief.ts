import { type PrepBrief, prepBrief } from "@delaywright/documents";
import { useEffect, useState } from "react";
import type { PlanAnswer, Told } from "../compute/index.js";
import { partsOfAnswer, settledOf } from "../standing/parts-of-answer.js";

/** What a plan's prep sheet needs, of its last settled answer. */
export interface KnownBrief {
  readonly brief: PrepBrief;
  /** Of the documents as they are now: only then may anything be signed. */
  readonly current: boolean;
}

const asked = new WeakMap<Told, Promise<PrepBrief | null>>();
/** Those that are there, so that another part of the page has them at once. */
const known = new WeakMap<Told, PrepBrief>();

function briefOf(path: string, settled: Told): Promise<PrepBrief | null> {
  const found =
    asked.get(settled) ??
    partsOfAnswer(path, settled).then((parts) => {
      if (parts === undefined) return null;
      const brief = prepBrief({ parts, data: settled.data });
      known.set(settled, brief);
      return brief;
    });
  asked.set(settled, found);
  return found;
}

/**
 * A plan's prep brief, kept up to date; null until there is one.
 *
 * An answer that still settles may change its mind, and take signatures back: until it has settled the last one stays, and nothing is
 * signed by it.
 *
 * @param path of the plan
 * @param answer to it
 */
export function usePrepBrief(path: string, answer: Pick<PlanAnswer, "told" | "fresh" | "settling">): KnownBrief | null {
  const [last, setLast] = useState<{ readonly of: Told; readonly path: string; readonly brief: PrepBrief } | null>(
    null,
  );
  const settled = settledOf(answer);
  useEffect(() => {
    if (settled === null) return;
    let left = false;
    void briefOf(path, settled).then((brief) => {
      if (!left && brief !== null) setLast({ of: settled, path, brief });
    });
    return () => {
      left = true;
    };
  }, [path, settled]);
  const brief = settled === null ? undefined : known.get(settled);
  if (brief !== undefined) return { brief, current: true };
  if (last === null || last.path !== path) return null;
  return { brief: last.brief, current: last.of === settled };
}
