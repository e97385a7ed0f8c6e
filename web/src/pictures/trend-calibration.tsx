import "./trend.css";
import type { ReactNode } from "react";
import { SPACE } from "./figures.js";
import { type Drawing, Picture, type PictureRoom } from "./picture.js";
import { AlongAxis, UpAxis, Whisker } from "./plot-axis.js";
import { scaleOf } from "./scale.js";

/** Flights that were given about the same odds. Shares 0…1. */
export interface TrendBin {
  readonly from: number;
  readonly to: number;
  readonly flights: number;
  /** Of them came clean. */
  readonly times: number;
  /** Mean of the odds they were given; null without a flight. */
  readonly given: number | null;
  /** 95 % */
  readonly interval: readonly [number, number];
}

export interface TrendCalibrationProps {
  /** Empty ones are left out. */
  readonly bins: readonly TrendBin[];
  /** What it comes to, in a sentence. */
  readonly sentence: string;
}

const whole = (share: number): string => `${Math.round(100 * share)}${SPACE}%`;

/** How many came clean, over the odds that they were given; on the line, the odds held. */
export function TrendCalibration({ bins, sentence }: TrendCalibrationProps): ReactNode {
  const filled = bins.flatMap((bin) => (bin.given === null || bin.flights === 0 ? [] : [{ ...bin, given: bin.given }]));
  const said = filled.map(
    ({ given, flights, times, interval: [low, high] }) =>
      `Given ${whole(given)}: ${times} of ${flights} came clean, with 95${SPACE}% confidence ${whole(low)} to ${whole(high)}.`,
  );
  return (
    <Picture
      name="calibration"
      title="Odds given, and what came"
      description={`${sentence} ${said.join(" ")}`}
      draw={(room) => drawBins(filled, room)}
    />
  );
}

function drawBins(bins: readonly (TrendBin & { readonly given: number })[], { width, grow }: PictureRoom): Drawing {
  const [top, base] = [26 * grow, 230 * grow];
  const left = 46 * grow;
  const x = scaleOf(0, 1, left, Math.min(width - 24, left + 340 * grow));
  const y = scaleOf(0, 1, base, top);
  const ticks = [0, 0.2, 0.4, 0.6, 0.8, 1].map((at) => ({ at, word: at === 1 ? whole(1) : String(100 * at) }));
  const marks = (
    <>
      <line x1={x(0)} y1={y(0)} x2={x(1)} y2={y(1)} className="trend-even" />
      {bins.map(({ from, given, flights, times, interval: [low, high] }) => {
        const at = x(given);
        const left = at + 60 * grow > width;
        return (
          <g key={from}>
            <Whisker x={at} y={y(times / flights)} low={y(low)} high={y(high)} />
            <text
              x={at + (left ? -9 : 9)}
              y={y(times / flights) + 4 * grow}
              className="tick halo"
              textAnchor={left ? "end" : "start"}
            >
              {`${times} of ${flights}`}
            </text>
          </g>
        );
      })}
      <UpAxis x={x} y={y} ticks={ticks} title="came clean" grow={grow} />
      <AlongAxis x={x} base={base} ticks={ticks} title="odds given" grow={grow} />
    </>
  );
  return { height: base + 42 * grow, marks };
}
