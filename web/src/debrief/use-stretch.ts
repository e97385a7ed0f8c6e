import { startTransition, useEffect, useState } from "react";
import type { DebriefTold, FlownLines, Stretch } from "../compute/debrief/protocol.js";
import { debriefClient } from "../compute/debrief-client.js";

let width: number | null = null;
globalThis.addEventListener?.("resize", () => {
  width = null;
});

/** Points of a line that a plot can show: two a pixel, as spikes go up and down within one. */
export function plotPoints(): number {
  // the page lays itself out anew where it is asked for its width in between
  width ??= globalThis.innerWidth;
  return Math.min(1600, 2 * width);
}

/** How long a window stands still before it is asked for [ms]. */
const REST = 60;

/**
 * The lines of a flight within a window, finer where it is zoomed. Until they come those of the whole stand in.
 *
 * @param plot of the debrief that was told last
 * @param window seconds after lift-off
 */
export function useStretch(plot: NonNullable<DebriefTold["plot"]>, { from, to }: Stretch): FlownLines {
  const [found, setFound] = useState<{ readonly key: string; readonly lines: FlownLines } | null>(null);
  const { whole, lines } = plot;
  const isWhole = from <= whole.from && to >= whole.to;
  const key = `${from} ${to} ${plot.zero}`;
  useEffect(() => {
    if (isWhole) return;
    let waits = true;
    // beyond the edges too, so that a step aside shows something at once
    const ask = { from: from - (to - from), to: to + (to - from), most: 3 * plotPoints() };
    const timer = setTimeout(() => {
      debriefClient.stretch(ask).then(
        (answer) => waits && answer !== null && startTransition(() => setFound({ key, lines: answer })),
        () => undefined,
      );
    }, REST);
    return () => {
      waits = false;
      clearTimeout(timer);
    };
  }, [from, to, isWhole, key]);
  if (isWhole || found === null) return lines;
  return found.lines;
}
