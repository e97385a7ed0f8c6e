import { type RefObject, useEffect } from "react";
import { REVEAL } from "./field-id.js";

/** Opens something folded when what is inside it is to be looked at. */
export function useRevealed(place: RefObject<HTMLElement | null>, open: () => void): void {
  useEffect(() => {
    const element = place.current;
    element?.addEventListener(REVEAL, open);
    return () => element?.removeEventListener(REVEAL, open);
  });
}
