import type { ReactNode } from "react";
import { textWidth } from "./place-labels.js";

/**
 * The baseline of a label that would lie on a line, moved to the nearer side of it.
 *
 * @param size of its print [px]
 * @param line [px]
 */
export function besideLine(baseline: number, size: number, line: number): number {
  const [above, below] = [line - 0.35 * size - 2, line + size + 3];
  if (baseline <= above || baseline >= below) return baseline;
  return baseline - above < below - baseline ? above : below;
}

/** A label that lies over marks, with a plate of paper behind it. */
export function Plate(props: {
  readonly x: number;
  readonly y: number;
  readonly words: string;
  readonly strong: boolean;
  readonly anchor: "start" | "middle" | "end";
  readonly grow: number;
  /** Where the limit lies: the plate keeps clear of it [px]. */
  readonly limit: number;
}): ReactNode {
  const { x, words, strong, anchor, grow, limit } = props;
  const size = (strong ? 13 : 12) * grow;
  const y = besideLine(props.y, size, limit);
  const wide = textWidth(words, size, strong) + 4;
  const left = anchor === "start" ? x - 2 : anchor === "end" ? x - wide + 2 : x - wide / 2;
  return (
    <>
      <rect className="plate" x={left} y={y - size} width={wide} height={size * 1.3} />
      <text className={strong ? "value" : "tick"} x={x} y={y} textAnchor={anchor}>
        {words}
      </text>
    </>
  );
}
