import { startTransition, useEffect, useState } from "react";

/** Calls back once the next frame is drawn; at once where no frames are drawn, as in a tab behind others. Returns what ends it. */
function afterPaint(then: () => void): () => void {
  let left = false;
  const tell = (): void => {
    if (!left) then();
  };
  const inFrame = (): void => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = tell;
    port2.postMessage(null);
  };
  if (document.visibilityState === "hidden") {
    const timer = setTimeout(tell);
    return () => clearTimeout(timer);
  }
  const frame = requestAnimationFrame(inFrame);
  return () => {
    left = true;
    cancelAnimationFrame(frame);
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
