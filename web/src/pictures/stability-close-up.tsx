import { swingSentences } from "@delaywright/documents";
import type { ReactNode } from "react";
import { secondsWords } from "./figures.js";
import { type Drawing, Picture, type PictureRoom } from "./picture.js";
import { Axes, type Edges, END, frameOf, Moment } from "./stability-frame.js";
import { momentOf } from "./stability-over-time.js";
import { angleSpan, type StabilityPictureProps, SwingLegend, SwingLines } from "./stability-swing.js";

/** The first seconds after the guide, and those around burnout, each on its own scales. */
export function StabilityCloseUp(props: StabilityPictureProps): ReactNode {
  const { data } = props;
  return (
    <Picture
      name="swing"
      title="Swing after the guide and around burnout"
      description={swingSentences(data).join(" ") || "It never left the guide: there is no swing to draw."}
      draw={(room) => drawCloseUp(props, room)}
      foot={<SwingLegend data={data} />}
    />
  );
}

function drawCloseUp({ data, state }: StabilityPictureProps, { width, grow, id }: PictureRoom): Drawing {
  const stacked = width < 480;
  const left = 34 * grow;
  const top = 24 * grow;
  const tall = stacked ? 120 : 168;
  const apart = 46 * grow;
  const end = width - END * grow;
  const half = (end - 2 * left - END * grow) / 2;
  const first: Edges = { left, right: stacked ? end : left + half, top, base: top + tall, grow };
  const second: Edges = stacked
    ? { ...first, top: first.base + apart + top, base: first.base + apart + top + tall }
    : { ...first, left: end - half, right: end };
  const burnout = momentOf(data, "burnout")?.time;
  const panel = (edges: Edges, name: string, which: "afterExit" | "aroundBurnout"): ReactNode => {
    const stretch = data.rigid[which];
    if (stretch === null) return null;
    const { from, to } = stretch;
    const frame = frameOf(edges, [from, to], angleSpan(data, from, to));
    return (
      <>
        <SwingLines data={data} frame={frame} clip={id(which)} />
        <Axes frame={frame} up={`${name}, deg`} across="seconds after ignition" />
        {burnout !== undefined && <Moment frame={frame} at={burnout} words={`burnout ${secondsWords(burnout, 2)}`} />}
      </>
    );
  };
  const marks = (
    <g className={`stability-${state}`}>
      {panel(first, "after the guide", "afterExit")}
      {panel(second, "around burnout", "aroundBurnout")}
    </g>
  );
  return { height: second.base + 40 * grow, marks };
}
