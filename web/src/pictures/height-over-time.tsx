import type { UnitSystem } from "@delaywright/documents";
import type { ReactNode } from "react";
import { amount, SPACE, secondsWords } from "./figures.js";
import { outcomes } from "./hatches.js";
import { type HeightFigures, heightLabels } from "./height-labels.js";
import {
  type FanColumns,
  type FlownColumns,
  largest,
  type OpenedColumns,
  type OpeningColumns,
  type Panel,
  panelsOf,
  splitOf,
  stretchOf,
} from "./height-panels.js";
import { distanceUnit } from "./map-ground.js";
import { type Drawing, Picture, type PictureRoom } from "./picture.js";
import { bandPath, isFigure, linePath, type Point, type Scale, scaleOf, ticksOf } from "./scale.js";
import "./height-over-time.css";

export interface HeightOverTimeProps extends HeightFigures {
  readonly state: "settling" | "settled" | "stale";
}

/** A ceiling farther above the flights than this is only named. */
const FAR_CEILING = 1.9;

/** Height over time: the climb and the way down on two time scales. */
export function HeightOverTime(props: HeightOverTimeProps): ReactNode {
  return (
    <Picture
      name="height"
      title="Height over time"
      description={sentences(props)}
      draw={(room) => drawHeight(props, room)}
    />
  );
}

function sentences({ burnout, top, openings, ceiling, floor, nominal, unopened, units }: HeightOverTimeProps): string {
  const said: string[] = [];
  const height = (value: number): string => amount(value, "distance", units);
  if (burnout) said.push(`Burnout after ${secondsWords(burnout.time)} at ${height(burnout.height)}.`);
  if (top)
    said.push(
      height(top.p05) === height(top.p95)
        ? `The top comes after ${secondsWords(top.time, 1)} at ${height(top.p50)}.`
        : `The top comes after ${secondsWords(top.time, 1)}; half of the flights go above ${height(top.p50)}, 9 in 10 from ${height(top.p05)} to ${height(top.p95)}.`,
    );
  const counts = outcomes
    .map(({ words }, i) => ({ words, count: Array.from(openings.outcome).filter((outcome) => outcome === i).length }))
    .filter(({ count }) => count > 0);
  const drawn = counts.reduce((sum, { count }) => sum + count, 0);
  if (drawn > 0)
    said.push(`Of ${drawn} flights drawn: ${counts.map(({ words, count }) => `${words} ${count}`).join(", ")}.`);
  else said.push("Nothing opens.");
  const landing = nominal.time[nominal.time.length - 1];
  if (drawn > 0 && isFigure(landing)) said.push(`The nominal flight lands after ${secondsWords(landing, 0)}.`);
  const fallen = unopened.time[unopened.time.length - 1];
  if (isFigure(fallen)) said.push(`If nothing opens it is down after ${secondsWords(fallen, 0)}.`);
  if (ceiling !== null) said.push(`The ceiling is at ${height(ceiling)}.`);
  said.push(`The floor for an opening is at ${height(floor)}.`);
  return said.join(" ");
}

/** The highest thing drawn [m]. */
function highestOf({ climb, openings, nominal, unopened, top }: HeightOverTimeProps): number {
  const figures = [
    climb === null ? 0 : largest(climb.p95),
    largest(openings.height),
    largest(nominal.height),
    largest(unopened.height),
    top?.p95 ?? 0,
  ];
  return Math.max(1, ...figures.filter(Number.isFinite));
}

function drawHeight(props: HeightOverTimeProps, room: PictureRoom): Drawing {
  const { climb, descent, openings, nominal, unopened, top, ceiling, floor, burnout, units, state } = props;
  const { width, grow } = room;
  const small = width < 430;
  const height = small ? 290 * grow : Math.min(452, Math.max(320, width * 0.62)) * Math.max(1, grow * 0.9);
  const base = height - 42 * grow;
  const above = 24 * grow;
  const highest = highestOf(props);
  const shown = ceiling !== null && ceiling > 0 && ceiling <= highest * FAR_CEILING ? ceiling : null;
  const most = Math.max(highest, shown ?? 0) * 1.05;
  const y = scaleOf(0, most, base, above);
  const unit = distanceUnit(units);
  const ticks = ticksOf(0, most / unit, small ? 4 : 5);
  const left = Math.max(30, 8 + 7.4 * String(ticks.at(-1) ?? 0).length) * grow + 6;
  const { split, end } = splitOf(climb, descent, openings, [nominal, unopened], top?.time ?? 0);
  const panels = panelsOf(split, end, left, width - 2, small ? 16 : 22);
  const opensAt = climb === null ? split : Math.min(split, climb.times[climb.times.length - 1] ?? split);
  const labels = heightLabels({ ...props, panels, y, base, left, grow, small, ceilingShown: shown !== null });
  const marks = (
    <g className={`height-${state}`}>
      <g className="height-odds">
        {panels.map((panel) => (
          <g key={panel.from}>
            {climb && <Fan fan={climb} panel={panel} from={0} to={opensAt} y={y} />}
            {descent && <Fan fan={descent} panel={panel} from={opensAt} to={end} y={y} />}
          </g>
        ))}
      </g>
      {panels.map((panel) => {
        const [start, stop] = [panel.x.start, panel.x.end];
        return (
          <g key={panel.from}>
            {shown !== null && <line x1={start} y1={y(shown)} x2={stop} y2={y(shown)} className="limit" />}
            <line x1={start} y1={y(floor)} x2={stop} y2={y(floor)} className="thin dash" />
            <line x1={start} y1={base} x2={stop} y2={base} className="axis" />
            <path d={linePath(drawn(stretchOf(nominal, panel.from, panel.to), panel.x, y))} className="median" />
            <Unopened flown={unopened} nominal={nominal} panel={panel} y={y} />
            <TimeAxis panel={panel} base={base} grow={grow} />
          </g>
        );
      })}
      <HeightAxis x={left} y={y} ticks={ticks} unit={unit} units={units} grow={grow} />
      {burnout && panels[0] && (
        <line
          x1={panels[0].x(burnout.time)}
          y1={base}
          x2={panels[0].x(burnout.time)}
          y2={y(burnout.height)}
          className="thin"
        />
      )}
      <g className="height-odds">
        <Openings openings={openings} panels={panels} y={y} />
      </g>
      {labels.map(({ key, lines, spot, looks }) =>
        lines.map((line, i) => (
          <text
            key={`${key}-${line.words}`}
            x={spot.x}
            y={spot.y + i * line.size * 1.25}
            className={looks[i] ?? looks.at(-1)}
            textAnchor={spot.anchor}
          >
            {line.words}
          </text>
        )),
      )}
      <text x={left} y={base + 36 * grow} className="tick">
        seconds after ignition
      </text>
      {panels.length > 1 && (
        <text x={width - 2} y={base + 36 * grow} className="tick" textAnchor="end">
          {small ? "slower scale" : "the way down, on a slower scale"}
        </text>
      )}
    </g>
  );
  return { height, marks };
}

const drawn = (rows: readonly (readonly [number, number])[], x: Scale, y: Scale): readonly Point[] =>
  rows.map(([time, height]) => [x(time), y(Math.max(0, height))]);

/** Bands that hold 50 and 90 % of the flights, within a stretch of time and a panel. */
function Fan({
  fan,
  panel,
  from,
  to,
  y,
}: {
  fan: FanColumns;
  panel: Panel;
  from: number;
  to: number;
  y: Scale;
}): ReactNode {
  const [start, stop] = [Math.max(from, panel.from), Math.min(to, panel.to)];
  if (stop <= start) return null;
  const edge = (height: ArrayLike<number>): readonly Point[] =>
    drawn(stretchOf({ time: fan.times, height }, start, stop), panel.x, y);
  return (
    <>
      <path d={bandPath(edge(fan.p95), edge(fan.p05))} className="veil" />
      <path d={bandPath(edge(fan.p75), edge(fan.p25))} className="veil" />
    </>
  );
}

/** The same flight if nothing opens, from the opening on. */
function Unopened(props: { flown: FlownColumns; nominal: OpenedColumns; panel: Panel; y: Scale }): ReactNode {
  const { flown, nominal, panel, y } = props;
  const opening = nominal.opening === null ? undefined : nominal.time[nominal.opening];
  if (opening === undefined) return null;
  const rows = stretchOf(flown, Math.max(panel.from, opening), panel.to);
  return <path d={linePath(drawn(rows, panel.x, y))} className="unopened" />;
}

/** As many round times as have room beside each other. */
function roomyTimes({ from, to, x }: Panel, grow: number): readonly number[] {
  for (const count of [10, 8, 6, 5, 4, 3, 2]) {
    const times = ticksOf(from, to, count);
    if (times.length * 32 * grow <= Math.abs(x.end - x.start)) return times;
  }
  return ticksOf(from, to, 1);
}

function TimeAxis({ panel, base, grow }: { panel: Panel; base: number; grow: number }): ReactNode {
  return roomyTimes(panel, grow).map((time) => (
    <g key={time}>
      <line x1={panel.x(time)} y1={base} x2={panel.x(time)} y2={base + 5} className="axis" />
      <text x={panel.x(time)} y={base + 18 * grow} className="tick" textAnchor="middle">
        {time}
      </text>
    </g>
  ));
}

function HeightAxis(props: {
  x: number;
  y: Scale;
  ticks: readonly number[];
  unit: number;
  units: UnitSystem;
  grow: number;
}): ReactNode {
  const { x, y, ticks, unit, units, grow } = props;
  return (
    <>
      <line x1={x} y1={y.end} x2={x} y2={y.start} className="axis" />
      {ticks.map((tick) => (
        <g key={tick}>
          {tick > 0 && <line x1={x - 4} y1={y(tick * unit)} x2={x} y2={y(tick * unit)} className="axis" />}
          <text x={x - 8} y={y(tick * unit) + 4 * grow} className="tick" textAnchor="end">
            {tick > 0 ? tick : `0${SPACE}${units === "metric" ? "m" : "ft"}`}
          </text>
        </g>
      ))}
    </>
  );
}

/** Clean first, so that the others lie on top. */
function Openings({
  openings,
  panels,
  y,
}: {
  openings: OpeningColumns;
  panels: readonly Panel[];
  y: Scale;
}): ReactNode {
  const rows = Array.from(openings.time, (time, i) => ({
    key: i,
    time,
    height: openings.height[i] ?? Number.NaN,
    hatch: outcomes[openings.outcome[i] ?? -1]?.hatch,
  }));
  return rows
    .filter(({ time, height }) => Number.isFinite(time) && Number.isFinite(height))
    .sort((a, b) => Number(a.hatch !== "clean") - Number(b.hatch !== "clean"))
    .map(({ key, time, height, hatch }) => {
      const panel = panels.find(({ from, to }) => time >= from && time <= to);
      return panel && <OpeningMark key={key} x={panel.x(time)} y={y(Math.max(0, height))} hatch={hatch} />;
    });
}

/** A stroke points the way the rocket was going: a dot clean, rising early, falling late, level lean. */
function OpeningMark({ x, y, hatch }: { x: number; y: number; hatch: string | undefined }): ReactNode {
  const n = (value: number): number => Math.round(value * 10) / 10;
  const stroke = (dx: number, dy: number): ReactNode => (
    <line x1={n(x - dx)} y1={n(y - dy)} x2={n(x + dx)} y2={n(y + dy)} className={`open-${hatch}`} />
  );
  if (hatch === "clean") return <circle cx={n(x)} cy={n(y)} r={1.8} className="open-clean" />;
  if (hatch === "early") return stroke(4.5, -4.5);
  if (hatch === "late") return stroke(4.5, 4.5);
  if (hatch === "lean") return stroke(6, 0);
  if (hatch === "low") return <circle cx={n(x)} cy={n(y)} r={3} className="open-low" />;
  return <path d={`M${n(x - 4)} ${n(y - 4)}l8 8m0 -8l-8 8`} className="open-grounded" />;
}
