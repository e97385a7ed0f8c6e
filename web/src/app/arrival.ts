import { useEffect, useRef } from "react";
import { focusHead } from "../chrome/focus-head.js";

/** Longest that a page may take to show its heading [ms]. */
const PATIENCE = 10_000;

/** Puts the reader at the head of a page that was gone to, unless something on it has been gone to already. */
function arrive(): () => void {
  scrollTo(0, 0);
  const until = performance.now() + PATIENCE;
  let frame = 0;
  const look = (): void => {
    if (!focusHead() && performance.now() < until) frame = requestAnimationFrame(look);
  };
  frame = requestAnimationFrame(look);
  return () => cancelAnimationFrame(frame);
}

/**
 * Names the page to the browser, and puts the reader at its head whenever another place is gone to.
 *
 * @param address of the place
 * @param title of the page
 */
export function useArrival(address: string, title: string): void {
  const last = useRef(address);
  useEffect(() => {
    document.title = title;
  }, [title]);
  useEffect(() => {
    if (last.current === address) return;
    last.current = address;
    return arrive();
  }, [address]);
}
