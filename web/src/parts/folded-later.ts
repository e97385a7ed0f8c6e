import { createContext, use, useState } from "react";

/** True while a page is still being filled: what is folded away in it can wait until what is seen is there. */
export const FoldedLater = createContext(false);

/** Whether what is folded away is to be drawn: as soon as it is opened, else once the page is filled; from then on it stays. */
export function useFoldedDrawn(expanded: boolean): boolean {
  const later = use(FoldedLater);
  const wanted = expanded || !later;
  const [drawn, draw] = useState(wanted);
  if (wanted && !drawn) draw(true);
  return wanted || drawn;
}
