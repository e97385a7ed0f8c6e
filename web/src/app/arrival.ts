import { useEffect, useRef } from "react";

/** Longest that a page may take to show its heading [ms]. */
const PATIENCE = 3000;

function headingOf(): HTMLElement | null {
  return document.querySelector<HTMLElement>("h1");
}

/** Puts the reader at the head of a page that was gone to, unless something on it has been gone to already. */
function arrive(): () => void {
  scrollTo(0, 0);
  const until = performance.now() + PATIENCE;
  let frame = 0;
  const look = (): void => {
    const heading = headingOf();
    if (heading === null) {
      if (performance.now() < until) frame = requestAnimationFrame(look);
      return;
    }
    if (document.activeElement !== null && document.activeElement !== document.body) return;
    heading.setAttribute("tabindex", "-1");
    heading.focus({ preventScroll: true });
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
