import { useEffect, useRef } from "react";
import { focusHead, pageHead } from "../chrome/focus-head.js";
import { whenThere } from "../parts/index.js";

/** Puts the reader at the head of a page that was gone to, unless something on it has been gone to already. */
function arrive(): () => void {
  scrollTo(0, 0);
  return whenThere(pageHead, focusHead);
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
