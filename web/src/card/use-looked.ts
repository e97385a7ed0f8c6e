import { type RefCallback, useCallback, useRef, useState } from "react";
import { watchInView } from "../parts/in-view.js";

/** How far from the window something counts as looked at already. */
const AHEAD = "600px";

/** Whether a part of the page was looked at yet. */
export function useLooked(): readonly [RefCallback<Element>, boolean] {
  const [looked, setLooked] = useState(false);
  const end = useRef<(() => void) | null>(null);
  const watch = useCallback((element: Element | null) => {
    end.current?.();
    end.current = element === null ? null : watchInView(element, AHEAD, (inView) => inView && setLooked(true));
  }, []);
  return [watch, looked];
}
