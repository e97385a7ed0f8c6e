import { useMemo, useSyncExternalStore } from "react";
import { shortlistSoFar } from "./shortlist-so-far.js";
import { theComputer } from "./the-computer.js";
import type { ShortlistAnswer } from "./told.js";

type Aim = Parameters<typeof shortlistSoFar>[1];

/** The motors of the library against a plan, kept up to date while somebody looks. */
export interface ShortlistNow {
  readonly answer: ShortlistAnswer;
  /** What is judged by now, in order; null: it is not known yet what motors there are. */
  readonly data: ReturnType<typeof shortlistSoFar>;
  /** Share of the motors that are judged, 0…1; null: none are under way. */
  readonly progress: number | null;
}

/**
 * @param plan path of the plan's document
 * @param aim what they are ordered by; the same object until it changes
 */
export function useShortlist(plan: string, aim: Aim): ShortlistNow {
  const watch = theComputer().shortlist(plan);
  const share = theComputer().shortlistProgress(plan);
  const answer = useSyncExternalStore(watch.subscribe, watch.get);
  const progress = useSyncExternalStore(share.subscribe, share.get);
  const data = useMemo(() => shortlistSoFar(answer, aim), [answer, aim]);
  return { answer, data, progress };
}
