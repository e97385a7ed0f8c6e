import { useEffect, useRef } from "react";
import { progressOf } from "../compute/index.js";

/**
 * The line that fills while draws are flown.
 *
 * It changes many times a second and is drawn past React: each of its changes would make React begin anew with whatever
 * larger part of the page it is drawing in pieces.
 */
export function ProgressLine({ path }: { readonly path: string }) {
  const line = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    const { get, subscribe } = progressOf(path);
    const draw = (): void => {
      if (line.current !== null) line.current.style.transform = `scaleX(${(get() ?? 0).toFixed(2)})`;
    };
    draw();
    return subscribe(draw);
  }, [path]);
  return (
    <div className="plan-settle" aria-hidden="true">
      <span ref={line} />
    </div>
  );
}
