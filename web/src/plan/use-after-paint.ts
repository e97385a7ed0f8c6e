import { startTransition, useEffect, useState } from "react";

/** Calls back once the next frame is drawn; at once where no frames are drawn, as in a tab behind others. Returns what ends it. */
function afterPaint(then: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const next = (): void => {
    timer = setTimeout(then);
  };
  if (document.visibilityState === "hidden") next();
  const frame = timer === undefined ? requestAnimationFrame(next) : 0;
  return () => {
    cancelAnimationFrame(frame);
    clearTimeout(timer);
  };
}

/**
 * A value as it was when the last frame was drawn: what is drawn from it follows in pieces, behind what is drawn from the value
 * itself, and never holds up a key press. Null before the first.
 *
 * @param value changes its identity when it changes
 */
export function useAfterPaint<Value>(value: Value): Value | null {
  const [drawn, setDrawn] = useState<Value | null>(null);
  useEffect(() => afterPaint(() => startTransition(() => setDrawn(value))), [value]);
  return drawn;
}
