import type { ReactNode } from "react";
import type { Scale } from "./scale.js";

export interface UpTicksProps {
  readonly x: Scale;
  readonly y: Scale;
  readonly ticks: readonly { readonly at: number; readonly word: string }[];
  readonly grow: number;
}

/** An axis of figures on the left. */
export function UpTicks({ x, y, ticks, grow }: UpTicksProps): ReactNode {
  return (
    <>
      <line x1={x.start} x2={x.start} y1={y.end} y2={y.start} className="axis" />
      {ticks.map(({ at, word }) => (
        <g key={word}>
          <line x1={x.start - 4} x2={x.start} y1={y(at)} y2={y(at)} className="axis" />
          <text x={x.start - 8} y={y(at) + 4 * grow} className="tick" textAnchor="end">
            {word}
          </text>
        </g>
      ))}
    </>
  );
}

/** The same, its words at its top. */
export function UpAxis({ title, ...axis }: UpTicksProps & { readonly title: string }): ReactNode {
  const { x, y } = axis;
  return (
    <>
      <UpTicks {...axis} />
      <text x={x.start - 8} y={y.end - 8} className="tick" textAnchor="start">
        {title}
      </text>
    </>
  );
}

/** An axis of figures at the foot, its words under it. */
export function AlongAxis(props: {
  readonly x: Scale;
  readonly base: number;
  readonly ticks: readonly { readonly at: number; readonly word: string }[];
  readonly title: string;
  readonly grow: number;
}): ReactNode {
  const { x, base, ticks, title, grow } = props;
  return (
    <>
      <line x1={x.start} x2={x.end} y1={base} y2={base} className="axis" />
      {ticks.map(({ at, word }) => (
        <g key={word}>
          <line x1={x(at)} x2={x(at)} y1={base} y2={base + 5} className="axis" />
          <text x={x(at)} y={base + 18 * grow} className="tick" textAnchor="middle">
            {word}
          </text>
        </g>
      ))}
      <text x={x.start} y={base + 35 * grow} className="tick">
        {title}
      </text>
    </>
  );
}

/** A figure with its interval: a stroke with ends, and a dot. */
export function Whisker(props: {
  readonly x: number;
  readonly y: number;
  readonly low: number;
  readonly high: number;
  /** Not counted: its dot is hollow and its stroke dashed. */
  readonly hollow?: boolean;
}): ReactNode {
  const { x, y, low, high, hollow = false } = props;
  return (
    <g className={hollow ? "trend-out" : "trend-in"}>
      <line x1={x} x2={x} y1={low} y2={high} className="trend-stroke" />
      <line x1={x - 5} x2={x + 5} y1={low} y2={low} className="trend-stroke end" />
      <line x1={x - 5} x2={x + 5} y1={high} y2={high} className="trend-stroke end" />
      <circle cx={x} cy={y} r={4.5} className="trend-dot" />
    </g>
  );
}
