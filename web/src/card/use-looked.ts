import { type RefCallback, useCallback, useRef, useState } from "react";

/** How far from the window something counts as looked at already. */
const AHEAD = "600px";

/** Whether a part of the page was looked at yet. */
export function useLooked(): readonly [RefCallback<Element>, boolean] {
  const [looked, setLooked] = useState(false);
  const observer = useRef<IntersectionObserver | null>(null);
  const watch = useCallback((element: Element | null) => {
    observer.current?.disconnect();
    if (element === null) return;
    observer.current = new IntersectionObserver(
      (seen) => {
        if (seen.some(({ isIntersecting }) => isIntersecting)) setLooked(true);
      },
      { rootMargin: AHEAD },
    );
    observer.current.observe(element);
  }, []);
  return [watch, looked];
}
