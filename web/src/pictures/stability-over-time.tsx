import {
  calibresWords,
  type StabilityMoment,
  type StabilityWhich,
  type SteadinessData,
  stabilityVerdictSentences,
  swingSentences,
} from "@delaywright/documents";
import type { ReactNode } from "react";
import { secondsWords } from "./figures.js";
import { type Drawing, Picture, type PictureRoom } from "./picture.js";
import { Axes, END, frameOf, LimitLine, lineIn, Moment } from "./stability-frame.js";
import { angleSpan, type StabilityPictureProps, SwingLegend, SwingLines } from "./stability-swing.js";

export interface StabilityOverTimeProps extends StabilityPictureProps {
  /** Least margin of the rules at guide exit and burnout [calibres]; null: no rule names one. */
  readonly leastMargin: number | null;
}

/** Angle of attack, and static margin with its limits below it, from the guide's end to the top. */
export function StabilityOverTime(props: StabilityOverTimeProps): ReactNode {
  const { data } = props;
  return (
    <Picture
      name="stability"
      title="Angle of attack and static margin over time"
      description={sentences(props)}
      draw={(room) => drawOverTime(props, room)}
      foot={<SwingLegend data={data} />}
    />
  );
}

/** The figures of one moment. */
export function momentOf({ stability }: SteadinessData, which: StabilityWhich): StabilityMoment | undefined {
  return stability.moments.find((moment) => moment.which === which);
}

function sentences({ data, leastMargin }: StabilityOverTimeProps): string {
  const margins = data.stability.moments.map(
    ({ which, margin }) => `${which.replace("-", " ")} ${calibresWords(margin)}`,
  );
  return [
    ...swingSentences(data),
    ...(margins.length === 0 ? [] : [`Static margin: ${margins.join(", ")}.`]),
    ...(leastMargin === null ? [] : [`Least margin of the rules ${calibresWords(leastMargin)}.`]),
    ...stabilityVerdictSentences(data.stability),
  ].join(" ");
}

function drawOverTime({ data, state, leastMargin }: StabilityOverTimeProps, { width, grow, id }: PictureRoom): Drawing {
  const small = width < 430;
  const { columns, limits } = data.stability;
  const from = columns.time[0] ?? 0;
  const to = columns.time.at(-1) ?? 1;
  const edges = { left: 34 * grow, right: width - END * grow, grow };
  const [upper, lower] = small ? [130, 104] : [172, 128];
  const top = 24 * grow;
  const gap = 44 * grow;
  const swing = frameOf({ ...edges, top, base: top + upper }, [from, to], angleSpan(data, from, to));
  const most = Math.max(limits.mostMargin * 1.25, 1.1 * Math.max(0, ...columns.margin));
  const least = Math.min(0, ...columns.margin);
  const bottom = top + upper + gap;
  const margin = frameOf({ ...edges, top: bottom, base: bottom + lower }, [from, to], [least, most]);
  const burnout = momentOf(data, "burnout")?.time;
  const marks = (
    <g className={`stability-${state}`}>
      <SwingLines data={data} frame={swing} clip={id("swing")} />
      <Axes frame={swing} up="angle of attack, deg" figures={false} />
      {burnout !== undefined && <Moment frame={swing} at={burnout} words={`burnout ${secondsWords(burnout, 2)}`} />}
      <LimitLine frame={margin} at={limits.mostMargin} words={`over-stable above ${limits.mostMargin}`} />
      {leastMargin !== null && <LimitLine frame={margin} at={leastMargin} words={`least ${leastMargin}`} below />}
      <path d={lineIn(margin, columns.time, columns.margin)} className="median" />
      <Axes frame={margin} up="static margin, calibres" across="seconds after ignition, up to the top" />
      {burnout !== undefined && <Moment frame={margin} at={burnout} />}
    </g>
  );
  return { height: bottom + lower + 40 * grow, marks };
}
