import { onReaderMoves } from "./reader-moves.js";

/** Longest that a page at rest may take to draw something after one has gone there [ms]. */
const PATIENCE = 10_000;

/** A page that is still being filled, or whose answer settles, says so. */
const isBusy = (): boolean => document.querySelector("[aria-busy=true]") !== null;

/**
 * Calls back with what is looked for once the page has drawn it: at once where it is there, else after the frame that brings it. It
 * is looked for as long as anything on the page is busy, and for some seconds in any case.
 *
 * @param find looks for it; null while it is not there
 * @returns ends it
 */
export function whenThere<Found>(find: () => Found | null, then: (found: Found) => void): () => void {
  const until = performance.now() + PATIENCE;
  let frame = 0;
  const look = (): void => {
    const found = find();
    if (found !== null) then(found);
    else if (performance.now() < until || isBusy()) frame = requestAnimationFrame(look);
  };
  look();
  return () => cancelAnimationFrame(frame);
}

/** As `whenThere`, for a place that the reader asked to go to: given up as soon as they move on. */
export function goWhenThere<Found>(find: () => Found | null, then: (found: Found) => void): void {
  const over = new AbortController();
  const leave = whenThere(find, (found) => {
    over.abort();
    then(found);
  });
  onReaderMoves(() => {
    over.abort();
    leave();
  }, over.signal);
}
