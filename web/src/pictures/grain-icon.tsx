import type { ReactNode } from "react";
import { within } from "./scale.js";

interface GrainMarkProps {
  /** Share of the whole element that is taken out, 0…1. */
  readonly removed: number;
  /** Size [px]. */
  readonly width: number;
  readonly height: number;
  /** Left upper corner inside a larger picture [px]. */
  readonly x?: number;
  readonly y?: number;
}

/** The delay grain cut to scale: what is out white and dashed, what stays dark. A mark inside an svg. */
export function GrainMark({ removed, width, height, x = 0, y = 0 }: GrainMarkProps): ReactNode {
  const out = within(removed, 0, 1) * height;
  return (
    <>
      <rect className="gone" x={x} y={y} width={width} height={height} />
      <rect className="grain" x={x} y={y + out} width={width} height={height - out} />
    </>
  );
}
