import { amountParts, type Measure, type UnitSystem } from "@delaywright/documents";
import { memo, type ReactNode } from "react";
import { shownUnit } from "./figures.js";
import { pointsOf } from "./flown-points.js";
import { type FlownBand, type FlownPair, type FlownSeries, type FlownWindow, rangeOf } from "./flown-view.js";
import { UpTicks } from "./plot-axis.js";
import { bandPath, hillPath, linePath, type Point, scaleOf, ticksOf } from "./scale.js";

export interface FlownPanelProps {
  readonly title: string;
  readonly lines: FlownPair;
  /** Lies behind the lines. */
  readonly band?: FlownBand | null;
  readonly measure: Measure;
  readonly units: UnitSystem;
  readonly window: FlownWindow;
  /** Where the axes begin and end [px]. */
  readonly left: number;
  readonly right: number;
  /** From its foot to its top, which is at zero [px]. */
  readonly tall: number;
  readonly grow: number;
  /** Address of the path that cuts off what lies outside. */
  readonly clip: string;
  /** Figures count from zero: its line is drawn, and what lies between is shaded. */
  readonly fromZero?: boolean;
}

/** One panel of a flight: what was recorded, solid, over what was predicted, dashed. Drawn again only where something in it changed: a handle that is dragged over it leaves it as it is, also where it makes room for words. */
export const FlownPanel = memo(function FlownPanel(props: FlownPanelProps): ReactNode {
  const { title, lines, measure, units, window, left, right, tall, grow, clip, fromZero = false } = props;
  const { band = null } = props;
  const high = band === null ? null : { time: band.time, value: band.high };
  const low = band === null ? null : { time: band.time, value: band.low };
  const x = scaleOf(window.from, window.to, left, right);
  const range = rangeOf([lines.flown, lines.predicted, high, low], window) ?? [0, 1];
  const [least, most] = fromZero ? [Math.min(range[0], 0), Math.max(range[1], 0)] : range;
  const margin = Math.max(0.06 * (most - least), 1e-3 * Math.max(Math.abs(least), Math.abs(most), 1));
  const y = scaleOf(least - margin, most + margin, tall, 0);
  const { unit, perSi } = shownUnit(measure, units);
  const ticks = ticksOf(y.from * perSi, y.to * perSi, Math.max(2, Math.round(tall / (38 * grow))));
  const points = (line: FlownSeries): readonly Point[] => pointsOf(line, window, x, y);
  const zero = y.from <= 0 && y.to >= 0 ? y(0) : null;
  return (
    <g>
      <g clipPath={`url(#${clip})`}>
        {high !== null && low !== null && <path d={bandPath(points(high), points(low))} className="veil" />}
        {fromZero && lines.flown !== null && <path d={hillPath(points(lines.flown), y(0))} className="veil" />}
        {zero !== null && <line x1={x.start} x2={x.end} y1={zero} y2={zero} className="flown-zero" />}
        {lines.predicted !== null && <path d={linePath(points(lines.predicted))} className="flown-predicted" />}
        {lines.flown !== null && <path d={linePath(points(lines.flown))} className="flown-line" />}
      </g>
      <UpTicks
        x={x}
        y={y}
        ticks={ticks.map((tick) => ({ at: tick / perSi, word: String(Number(tick.toPrecision(6))) }))}
        grow={grow}
      />
      <text x={x.start + 6} y={-5 * grow} className="tick halo">
        {`${title}, ${unit || amountParts(0, measure, units).unit}`}
      </text>
    </g>
  );
});
