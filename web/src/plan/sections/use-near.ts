import { useEffect, useState } from "react";
import { flushSync } from "react-dom";
import { watchInView } from "../../parts/in-view.js";
import { useNarrow } from "../../parts/index.js";

/** How far from the window something counts as in view already. */
const AHEAD = "400px";

/**
 * Whether a part of the page is in view or close to it, or is about to be printed. True where that cannot be told.
 *
 * @param id of the element
 * @param there the element is on the page
 */
export function useNear(id: string, there: boolean): boolean {
  const [near, setNear] = useState(true);
  const narrow = useNarrow();
  // biome-ignore lint/correctness/useExhaustiveDependencies: a narrow page has other elements
  useEffect(() => {
    const element = document.getElementById(id);
    if (!there || element === null || !("IntersectionObserver" in globalThis)) return;
    const end = watchInView(element.closest(".fold") ?? element, AHEAD, setNear);
    const forPaper = (): void => flushSync(() => setNear(true));
    addEventListener("beforeprint", forPaper);
    return () => {
      end();
      removeEventListener("beforeprint", forPaper);
    };
  }, [id, there, narrow]);
  return near;
}
