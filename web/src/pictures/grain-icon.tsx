import type { ReactNode } from "react";
import { within } from "./scale.js";

export interface GrainIconProps {
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
export function GrainMark({ removed, width, height, x = 0, y = 0 }: GrainIconProps): ReactNode {
  const out = within(removed, 0, 1) * height;
  return (
    <>
      <rect className="gone" x={x} y={y} width={width} height={height} />
      <rect className="grain" x={x} y={y + out} width={width} height={height - out} />
    </>
  );
}

/** The grain as a picture of its own beside words that say the same; it is hidden from readers of the words. */
export function GrainIcon({ removed, width, height }: Pick<GrainIconProps, "removed" | "width" | "height">): ReactNode {
  return (
    <svg width={width + 2} height={height + 2} aria-hidden="true">
      <GrainMark removed={removed} width={width} height={height} x={1} y={1} />
    </svg>
  );
}
