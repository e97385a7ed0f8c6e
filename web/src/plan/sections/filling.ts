import { startTransition, useEffect, useLayoutEffect, useState } from "react";
import { flushSync } from "react-dom";

/** How much of a part of the sheet is drawn: none, what is not folded away, or all of it. */
export type Drawn = "none" | "open" | "whole";

/**
 * How much of a part is drawn while the sheet fills: part by part what is seen, then part by part what is folded away. On a narrow
 * sheet the heads are all that most parts show: they are there from the start.
 *
 * @param at place of the part in the order of filling, from 0
 * @param step how many steps were taken
 * @param parts how many parts there are
 */
export function drawnAt(at: number, step: number, parts: number, narrow: boolean): Drawn {
  const open = narrow ? 0 : parts;
  if (step > open + at) return "whole";
  return narrow || step > at ? "open" : "none";
}

/** Steps after which all of a sheet is drawn. */
export function lastStep(parts: number, narrow: boolean): number {
  return narrow ? parts : 2 * parts;
}

/**
 * The steps by which a sheet fills, each drawn by itself so that nothing waits for all of it. A sheet that is about to be printed
 * is filled at once.
 *
 * @param steps after which it is full
 * @param begun there is something to draw
 * @returns how many steps were taken; endless once it is full, so that a phone that is turned then stays as full as it was
 */
export function useFilling(steps: number, begun: boolean): number {
  const [step, take] = useState(1);
  useEffect(() => {
    if (!begun || step >= steps) return;
    const next = step + 1 < steps ? step + 1 : Number.POSITIVE_INFINITY;
    startTransition(() => take((last) => Math.max(last, next)));
  }, [begun, step, steps]);
  useLayoutEffect(() => {
    const forPaper = (): void => flushSync(() => take(Number.POSITIVE_INFINITY));
    addEventListener("beforeprint", forPaper);
    return () => removeEventListener("beforeprint", forPaper);
  }, []);
  return step;
}
