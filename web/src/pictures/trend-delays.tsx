import "./trend.css";
import type { ReactNode } from "react";
import { secondsWords } from "./figures.js";
import { type Drawing, Picture, type PictureRoom } from "./picture.js";
import { AlongAxis, UpAxis, Whisker } from "./plot-axis.js";
import { scaleOf, ticksOf } from "./scale.js";

/** A delay as set and as flown [s]. */
export interface TrendDelay {
  readonly key: string;
  readonly name: string;
  readonly set: number;
  /** `low` and `high`: its 90 % interval; where only a bound is known one of them is not finite. */
  readonly flown: number;
  readonly low: number;
  readonly high: number;
  readonly excluded: boolean;
}

export interface TrendDelaysProps {
  readonly name: string;
  readonly title: string;
  readonly delays: readonly TrendDelay[];
}

function flownWords({ name, set, flown, low, high, excluded }: TrendDelay): string {
  const bound = Number.isFinite(low) ? (Number.isFinite(high) ? "" : "at least ") : "at most ";
  const range = bound === "" ? `, 9 in 10 from ${secondsWords(low, 1)} to ${secondsWords(high, 1)}` : "";
  return `${name}: set to ${secondsWords(set)}, flown ${bound}${secondsWords(flown, 1)}${range}${excluded ? ", left out" : ""}.`;
}

/** Delays as flown over delays as set: on the line, they burnt what was cut. */
export function TrendDelays({ name, title, delays }: TrendDelaysProps): ReactNode {
  return (
    <Picture
      name={name}
      title={title}
      description={`Seconds flown over seconds set; on the slanting line both are equal. ${delays.map(flownWords).join(" ")}`}
      draw={(room) => drawDelays(delays, room)}
    />
  );
}

function drawDelays(delays: readonly TrendDelay[], { width, grow }: PictureRoom): Drawing {
  const [top, base] = [26 * grow, 230 * grow];
  const left = 36 * grow;
  const all = delays.flatMap(({ set, flown, low, high }) => [set, flown, low, high]).filter(Number.isFinite);
  const least = Math.max(0, Math.floor(Math.min(...all, 20) - 1));
  const most = Math.ceil(Math.max(...all, least + 2) + 1);
  const x = scaleOf(least, most, left, Math.min(width - 8, left + 340 * grow));
  const y = scaleOf(least, most, base, top);
  const ticks = ticksOf(least, most, 6).map((at) => ({ at, word: String(at) }));
  const marks = (
    <>
      <line x1={x(least)} y1={y(least)} x2={x(most)} y2={y(most)} className="trend-even" />
      {delays.map(({ key, set, flown, low, high, excluded }) => (
        <g key={key}>
          <Whisker
            x={x(set)}
            y={y(flown)}
            low={y(Number.isFinite(low) ? low : least)}
            high={y(Number.isFinite(high) ? high : most)}
            hollow={excluded}
          />
        </g>
      ))}
      <UpAxis x={x} y={y} ticks={ticks} title="seconds flown" grow={grow} />
      <AlongAxis x={x} base={base} ticks={ticks} title="seconds set" grow={grow} />
    </>
  );
  return { height: base + 42 * grow, marks };
}
