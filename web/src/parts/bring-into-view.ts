import { onReaderMoves } from "./reader-moves.js";

/** So long a page is kept at a place, and longer where it is still being filled [ms]. */
const GROWS = 10_000;

let leave: () => void = () => undefined;

/**
 * Scrolls to something. On a page that is still being filled it stays there, whatever is drawn above it, until the reader moves.
 *
 * @param block where in the window it shall be
 * @param calm without a movement on the way
 */
export function bringIntoView(element: Element, block: "start" | "center", calm: boolean): void {
  leave();
  const grows = isBeingFilled(element);
  element.scrollIntoView({ block, behavior: grows || calm ? "auto" : "smooth" });
  if (grows) leave = stayAt(element, block);
}

function isBeingFilled(element: Element): boolean {
  return element.closest("[aria-busy=true]") !== null;
}

function stayAt(element: Element, block: "start" | "center"): () => void {
  const where = () => ({ scrolled: scrollY, height: document.body.getBoundingClientRect().height });
  let last = where();
  const grown = new ResizeObserver(() => {
    if (!element.isConnected) return end();
    element.scrollIntoView({ block });
    last = where();
  });
  // what the page does by itself goes with its height; a reader at the scroll bar moves one that stays as high
  const scrolled = (): void => {
    const now = where();
    if (now.scrolled !== last.scrolled && now.height === last.height) end();
  };
  const ended = new AbortController();
  const look = (): void => {
    if (isBeingFilled(element)) timer = setTimeout(look, GROWS);
    else end();
  };
  let timer = setTimeout(look, GROWS);
  function end(): void {
    clearTimeout(timer);
    ended.abort();
    grown.disconnect();
  }
  grown.observe(document.body);
  addEventListener("scroll", scrolled, { passive: true, signal: ended.signal });
  onReaderMoves(end, ended.signal);
  return end;
}
