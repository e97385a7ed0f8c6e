import "./flown.css";
import type { UnitSystem } from "@delaywright/documents";
import { memo, type ReactNode } from "react";
import { placeMarks } from "./flown-labels.js";
import { FlownPanel } from "./flown-panel.js";
import {
  type FlownBand,
  type FlownMark,
  type FlownPair,
  type FlownWindow,
  flownMargins,
  timeTicks,
} from "./flown-view.js";
import { type Drawing, Picture, type PictureRoom } from "./picture.js";
import { AlongAxis } from "./plot-axis.js";
import { scaleOf } from "./scale.js";

export interface FlownPlotProps {
  readonly window: FlownWindow;
  /** Above the pad [m]. */
  readonly height: FlownPair;
  /** Between which heights 9 in 10 predicted flights are [m]; null where it is not known. */
  readonly band: FlownBand | null;
  /** Flown less predicted [m]; null without a prediction. */
  readonly residual: FlownPair | null;
  /** [m/s] */
  readonly speed: FlownPair | null;
  /** [m/s²]; null without an accelerometer. */
  readonly acceleration: FlownPair | null;
  readonly marks: readonly FlownMark[];
  /** Stretches of the record that are not what they seem. */
  readonly flaws: readonly FlownWindow[];
  /** The event in hand. */
  readonly chosen: string | null;
  readonly units: UnitSystem;
  /** Full sentences with the figures. */
  readonly description: string;
}

/** A flight as recorded over the flight as predicted: height, what is left between them, speed and acceleration, on one clock. */
export function FlownPlot(props: FlownPlotProps): ReactNode {
  return (
    <Picture
      name="flown"
      title="Prediction against flight"
      description={props.description}
      draw={(room) => drawFlown(props, room)}
      foot={
        <ul className="legend flown-legend">
          <li>
            <i className="flown-key" aria-hidden="true" /> flown
          </li>
          <li>
            <i className="flown-key dashed" aria-hidden="true" /> predicted
          </li>
          {props.band !== null && (
            <li>
              <i className="flown-key band" aria-hidden="true" /> 9 in 10 predicted flights
            </li>
          )}
          {props.flaws.length > 0 && (
            <li>
              <i className="flown-key flawed" aria-hidden="true" /> the record is not to be trusted here
            </li>
          )}
        </ul>
      }
    />
  );
}

/** The panels from the top down, each with its share of the height. */
function panelsOf({ height, band, residual, speed, acceleration, units }: FlownPlotProps) {
  const all = [
    { title: "height", lines: height, band, measure: "distance", share: 1, fromZero: false },
    { title: "flown less predicted", lines: residual, measure: "distance", share: 0.34, fromZero: true },
    { title: "speed up", lines: speed, measure: "speed", share: 0.5, fromZero: false },
    { title: "acceleration", lines: acceleration, measure: "acceleration", share: 0.42, fromZero: false },
  ] as const;
  return all.flatMap(({ lines, ...panel }) => (lines === null ? [] : [{ ...panel, lines, units }]));
}

function drawFlown(props: FlownPlotProps, room: PictureRoom): Drawing {
  const { window, marks, flaws, chosen } = props;
  const { width, grow, id } = room;
  const { left, right } = flownMargins(room);
  const x = scaleOf(window.from, window.to, left, width - right);
  const { placed, rows } = placeMarks(marks, window, x, grow);
  const step = 15 * grow;
  const whole = width < 430 ? 190 : Math.min(300, Math.max(220, 0.34 * width));
  const gap = 26 * grow;
  let top = rows * step + 22 * grow;
  const first = top;
  const panels = panelsOf(props).map((panel) => {
    const { share, ...drawn } = panel;
    const made = { top, panel: { ...drawn, tall: share * whole } };
    top += share * whole + gap;
    return made;
  });
  const base = top - gap;
  const clip = id("clip");
  const drawn = (
    <>
      <clipPath id={clip}>
        <rect x={left} y={0} width={Math.max(1, width - right - left)} height={base} />
      </clipPath>
      <g clipPath={`url(#${clip})`}>
        {flaws.map(({ from, to }) => (
          <rect
            key={from}
            x={x(from)}
            y={first}
            width={Math.max(1.5, x(to) - x(from))}
            height={base - first}
            className="flown-flaw"
          />
        ))}
        {marks.map(({ name, predicted }) =>
          predicted === null ? null : (
            <line key={name} x1={x(predicted)} x2={x(predicted)} y1={first} y2={base} className="flown-foretold" />
          ),
        )}
      </g>
      {placed.map(({ name, x: at, row }) => (
        <line
          key={name}
          x1={at}
          x2={at}
          y1={(row + 0.2) * step}
          y2={base}
          className={name === chosen ? "flown-mark mine" : "flown-mark"}
        />
      ))}
      {panels.map(({ top, panel }) => (
        <g key={panel.title} transform={`translate(0 ${top})`}>
          <FlownPanel {...panel} window={window} left={x.start} right={x.end} grow={grow} clip={clip} />
        </g>
      ))}
      {placed.map(({ name, x: at, row, anchor, words }) => (
        <text
          key={name}
          x={at + (anchor === "start" ? 4 : -4)}
          y={(row + 0.85) * step}
          className={name === chosen ? "tick mine halo" : "tick halo"}
          textAnchor={anchor}
        >
          {words}
        </text>
      ))}
      <TimeAxis window={window} left={x.start} right={x.end} base={base} grow={grow} />
    </>
  );
  return { height: base + 40 * grow, marks: drawn };
}

interface TimeAxisProps {
  readonly window: FlownWindow;
  readonly left: number;
  readonly right: number;
  readonly base: number;
  readonly grow: number;
}

/** Stays as it is while an event is dragged. */
const TimeAxis = memo(({ window, left, right, base, grow }: TimeAxisProps) => (
  <AlongAxis
    x={scaleOf(window.from, window.to, left, right)}
    base={base}
    ticks={timeTicks(window, right - left, grow).map((at) => ({ at, word: String(at) }))}
    title="seconds after lift-off"
    grow={grow}
  />
));
