/** Longest that a page may take to draw something after one has gone there [ms]. */
const PATIENCE = 5000;

/**
 * Calls back with what is looked for once the page has drawn it: at once where it is there, else after the frame that brings it.
 *
 * @param find looks for it; null while it is not there
 * @param patience for so long it is looked for [ms]
 * @returns ends it
 */
export function whenThere<Found>(
  find: () => Found | null,
  then: (found: Found) => void,
  patience = PATIENCE,
): () => void {
  const until = performance.now() + patience;
  let frame = 0;
  const look = (): void => {
    const found = find();
    if (found !== null) then(found);
    else if (performance.now() < until) frame = requestAnimationFrame(look);
  };
  look();
  return () => cancelAnimationFrame(frame);
}
