/** Longest that a page is kept at a place while it grows [ms]. */
const GROWS = 10_000;

/** What a reader does to go on from there. */
const moves = ["wheel", "touchmove", "pointerdown", "keydown"] as const;

let leave: () => void = () => undefined;

/**
 * Scrolls to something. On a page that is still being filled it stays there, whatever is drawn above it, until the reader moves.
 *
 * @param block where in the window it shall be
 * @param calm without a movement on the way
 */
export function bringIntoView(element: Element, block: "start" | "center", calm: boolean): void {
  leave();
  const grows = element.closest("[aria-busy=true]") !== null;
  element.scrollIntoView({ block, behavior: grows || calm ? "auto" : "smooth" });
  if (grows) leave = stayAt(element, block);
}

function stayAt(element: Element, block: "start" | "center"): () => void {
  const where = () => ({ scrolled: scrollY, top: element.getBoundingClientRect().top });
  let last = where();
  const grown = new ResizeObserver(() => {
    const now = where();
    // what a page does by itself changes one of them; a reader at the scroll bar both
    if (!element.isConnected || (now.scrolled !== last.scrolled && now.top !== last.top)) return end();
    element.scrollIntoView({ block });
    last = where();
  });
  const ended = new AbortController();
  const timer = setTimeout(end, GROWS);
  function end(): void {
    clearTimeout(timer);
    ended.abort();
    grown.disconnect();
  }
  grown.observe(document.body);
  for (const move of moves) addEventListener(move, end, { capture: true, passive: true, signal: ended.signal });
  return end;
}
