import type { ReactNode } from "react";
import { linePath, type Point, type Scale, scaleOf, ticksOf } from "./scale.js";

/** Room right of a panel for half of its last figure [px]. */
export const END = 12;

/** One panel of a picture: its edges [px] and scales. */
export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly base: number;
  readonly x: Scale;
  readonly y: Scale;
  /** How much larger the small print is than on the desk. */
  readonly grow: number;
}

/** Edges of a panel [px]. */
export type Edges = Pick<Frame, "left" | "right" | "top" | "base" | "grow">;

/** A panel over spans of figures. */
export function frameOf(
  edges: Edges,
  across: readonly [from: number, to: number],
  up: readonly [from: number, to: number],
): Frame {
  const { left, right, top, base } = edges;
  return { ...edges, x: scaleOf(across[0], across[1], left, right), y: scaleOf(up[0], up[1], base, top) };
}

/** A line of columns of one length in a panel. */
export function lineIn({ x, y }: Frame, across: readonly number[], up: readonly number[]): string {
  return linePath(across.map((value, i): Point => [x(value), y(up[i] ?? Number.NaN)]));
}

/** Axes with as many round figures as have room; what is measured upwards stands above its axis. */
export function Axes(props: {
  readonly frame: Frame;
  /** What is measured upwards, with its unit. */
  readonly up: string;
  /** Below the axis, left; left out: it is told elsewhere. */
  readonly across?: string;
  /** Without figures along the bottom where false. */
  readonly figures?: boolean;
}): ReactNode {
  const { frame, up, across, figures = true } = props;
  const { left, right, top, base, x, y, grow } = frame;
  const columns = ticksOf(x.from, x.to, Math.max(2, Math.min(10, Math.floor((right - left) / (48 * grow)))));
  const rows = ticksOf(y.from, y.to, Math.max(2, Math.min(5, Math.floor((base - top) / (26 * grow)))));
  return (
    <>
      <text x={left} y={top - 8 * grow} className="tick">
        {up}
      </text>
      <line x1={left} y1={base} x2={right} y2={base} className="axis" />
      <line x1={left} y1={top} x2={left} y2={base} className="axis" />
      {rows.map((row) => (
        <g key={row}>
          <line x1={left - 4} y1={y(row)} x2={left} y2={y(row)} className="axis" />
          <text x={left - 8} y={y(row) + 4 * grow} className="tick" textAnchor="end">
            {row}
          </text>
        </g>
      ))}
      {columns.map((column) => (
        <g key={column}>
          <line x1={x(column)} y1={base} x2={x(column)} y2={base + 4} className="axis" />
          {figures && (
            <text x={x(column)} y={base + 17 * grow} className="tick" textAnchor="middle">
              {column}
            </text>
          )}
        </g>
      ))}
      {across !== undefined && (
        <text x={left} y={base + 34 * grow} className="tick">
          {across}
        </text>
      )}
    </>
  );
}

/** A moment as an upright line, named at its head on the side that has room. */
export function Moment(props: { readonly frame: Frame; readonly at: number; readonly words?: string }): ReactNode {
  const { frame, at, words } = props;
  const { left, right, top, base, x, grow } = frame;
  if (at < x.from || at > x.to) return null;
  const mid = x(at);
  const end = mid > (left + right) / 2;
  return (
    <>
      <line x1={mid} y1={top} x2={mid} y2={base} className="thin dash" />
      {words !== undefined && (
        <text x={mid + (end ? -5 : 5)} y={top + 11 * grow} className="tick halo" textAnchor={end ? "end" : "start"}>
          {words}
        </text>
      )}
    </>
  );
}

/** A limit across a panel with its words at the right end, above or below the line. */
export function LimitLine(props: {
  readonly frame: Frame;
  readonly at: number;
  readonly words: string;
  readonly below?: boolean;
}): ReactNode {
  const { frame, at, words, below = false } = props;
  const { left, right, y, grow } = frame;
  if (at < y.from || at > y.to) return null;
  return (
    <>
      <line x1={left} y1={y(at)} x2={right} y2={y(at)} className="limit" />
      <text x={right} y={below ? y(at) + 15 * grow : y(at) - 6} className="limit-word halo" textAnchor="end">
        {words}
      </text>
    </>
  );
}
