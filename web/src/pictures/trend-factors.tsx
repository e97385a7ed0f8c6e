import "./trend.css";
import type { ReactNode } from "react";
import { type Drawing, Picture, type PictureRoom } from "./picture.js";
import { textWidth } from "./place-labels.js";
import { UpAxis, Whisker } from "./plot-axis.js";
import { linePath, scaleOf, ticksOf } from "./scale.js";

/** A factor that one flight told, with its 90 % interval. */
export interface TrendFactor {
  readonly key: string;
  /** Short: its day, or its number. */
  readonly label: string;
  readonly name: string;
  readonly factor: number;
  readonly low: number;
  readonly high: number;
  /** Nothing is learned from it. */
  readonly excluded: boolean;
}

export interface TrendFactorsProps {
  /** File name of a saved picture. */
  readonly name: string;
  readonly title: string;
  /** Of what it is a factor: "drag, against what is reckoned". */
  readonly of: string;
  /** In the order in which they flew. */
  readonly factors: readonly TrendFactor[];
}

const figure = (value: number): string => value.toFixed(2);

/** A factor over the flights that told it, each with its interval. */
export function TrendFactors({ name, title, of, factors }: TrendFactorsProps): ReactNode {
  const said = factors.map(
    (each) =>
      `${each.name}: ${figure(each.factor)}, 9 in 10 from ${figure(each.low)} to ${figure(each.high)}${each.excluded ? ", left out" : ""}.`,
  );
  return (
    <Picture
      name={name}
      title={title}
      description={`${of}; 1 is as reckoned. ${said.join(" ")}`}
      draw={(room) => drawFactors(factors, of, room)}
    />
  );
}

function drawFactors(factors: readonly TrendFactor[], of: string, { width, grow }: PictureRoom): Drawing {
  const [top, base] = [26 * grow, 190 * grow];
  const left = 44 * grow;
  const ends = factors.flatMap(({ low, high, factor }) => [low, high, factor]).filter(Number.isFinite);
  const [low, high] = [Math.min(0.95, ...ends), Math.max(1.05, ...ends)];
  const margin = 0.08 * (high - low);
  const y = scaleOf(low - margin, high + margin, base, top);
  const x = scaleOf(0, Math.max(1, factors.length), left, width - 8);
  const ticks = ticksOf(y.from, y.to, 5).map((at) => ({ at, word: figure(at) }));
  const places = factors.map((each, i) => ({ each, at: x(i + 0.5) }));
  const counted = places.filter(({ each }) => !each.excluded);
  const room = (x.end - x.start) / Math.max(1, factors.length);
  const every = Math.ceil(Math.max(0, ...factors.map(({ label }) => textWidth(label, 12 * grow) + 8)) / room);
  const marks = (
    <>
      <UpAxis x={x} y={y} ticks={ticks} title={of} grow={grow} />
      <line x1={x.start} x2={x.end} y1={y(1)} y2={y(1)} className="trend-even" />
      <path d={linePath(counted.map(({ each, at }) => [at, y(each.factor)]))} className="trend-path" />
      {places.map(({ each, at }, i) => (
        <g key={each.key}>
          <Whisker x={at} y={y(each.factor)} low={y(each.low)} high={y(each.high)} hollow={each.excluded} />
          {i % Math.max(1, every) === 0 && (
            <text x={at} y={base + 18 * grow} className="tick" textAnchor="middle">
              {each.label}
            </text>
          )}
        </g>
      ))}
      <line x1={x.start} x2={x.end} y1={base} y2={base} className="axis" />
    </>
  );
  return { height: base + 26 * grow, marks };
}
