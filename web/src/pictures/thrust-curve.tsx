import { amountParts, type UnitSystem } from "@delaywright/documents";
import type { ReactNode } from "react";
import { amount, SPACE, secondsWords } from "./figures.js";
import { type Drawing, Picture, type PictureRoom } from "./picture.js";
import { placeLabels } from "./place-labels.js";
import { hillPath, isFigure, linePath, type Point, scaleOf, ticksOf } from "./scale.js";
import "./thrust-curve.css";

export interface ThrustCurveProps {
  /** Columns of one length: seconds from ignition, rising, and newtons. */
  readonly times: ArrayLike<number>;
  readonly newtons: ArrayLike<number>;
  /** [N] */
  readonly averageThrust: number;
  /** When the motor is taken to have burnt out [s]. */
  readonly burnEnd: number;
  /** [N s]; for the description. */
  readonly totalImpulse?: number;
  readonly units: UnitSystem;
}

/** Newtons, or pounds of force, in one unit [N]. */
const forceUnit = (units: UnitSystem): number => (units === "metric" ? 1 : 4.448_221_615_260_5);

/** The thrust curve: force over time, its average and the burnout. */
export function ThrustCurve(props: ThrustCurveProps): ReactNode {
  return (
    <Picture
      name="thrust"
      title="Thrust curve"
      description={sentences(props)}
      draw={(room) => drawThrust(props, room)}
      firstWidth={384}
    />
  );
}

function pointsOf({ times, newtons }: ThrustCurveProps): readonly (readonly [number, number])[] {
  return Array.from(times, (time, i): readonly [number, number] => [time, newtons[i] ?? Number.NaN]).filter(
    ([time, force]) => Number.isFinite(time) && Number.isFinite(force),
  );
}

function sentences(props: ThrustCurveProps): string {
  const { averageThrust, burnEnd, totalImpulse, units } = props;
  const points = pointsOf(props);
  const peak = points.reduce<readonly [number, number]>((most, point) => (point[1] > most[1] ? point : most), [0, 0]);
  if (peak[1] <= 0) return "There is no thrust to draw.";
  const impulse = totalImpulse === undefined ? "" : ` Total impulse ${Math.round(totalImpulse)}${SPACE}N${SPACE}s.`;
  return `Most thrust ${amount(peak[1], "force", units)} after ${secondsWords(peak[0])}; on average ${amount(averageThrust, "force", units)}. Burnout after ${secondsWords(burnEnd)}.${impulse}`;
}

function drawThrust(props: ThrustCurveProps, { width, grow }: PictureRoom): Drawing {
  const { averageThrust, burnEnd, units } = props;
  const height = 104 * grow;
  const base = height - 24 * grow;
  const unit = forceUnit(units);
  const rows = pointsOf(props);
  const last = Math.max(0.1, burnEnd, ...rows.map(([time]) => time).filter((time) => time < 1e6));
  const most = Math.max(averageThrust, ...rows.map(([, force]) => force), unit) / unit;
  const y = scaleOf(0, most * 1.12, base, 4);
  const forces = ticksOf(0, most * 1.12, 3);
  const left = 10 + 7.2 * grow * Math.max(2, String(forces.at(-1) ?? 0).length);
  const x = scaleOf(0, last * 1.14, left, width - 2);
  const points = rows.map(([time, force]): Point => [x(time), y(Math.max(0, force / unit))]);
  const seconds = ticksOf(0, last * 1.1, Math.max(2, Math.min(6, Math.floor(width / 90))));
  const mean = isFigure(averageThrust) && averageThrust > 0 ? y(averageThrust / unit) : null;
  const [end, label] = placeWords(props, points, x(burnEnd), mean, { width, grow, left, base });
  const marks = (
    <>
      <path d={hillPath(points, base)} className="thrust-area" />
      <path d={linePath(points)} className="median" />
      <line x1={left} y1={base} x2={width - 2} y2={base} className="axis" />
      {forces.map((force) => (
        <text key={force} x={left - 6} y={y(force) + 4 * grow} className="tick" textAnchor="end">
          {force}
        </text>
      ))}
      {seconds.map((time, i) => (
        <g key={time}>
          <line x1={x(time)} y1={base} x2={x(time)} y2={base + 4} className="axis" />
          <text x={x(time)} y={base + 17 * grow} className="tick" textAnchor="middle">
            {i === seconds.length - 1 ? `${time}${SPACE}s` : time}
          </text>
        </g>
      ))}
      {mean !== null && <line x1={left} y1={mean} x2={x(burnEnd)} y2={mean} className="thin thrust-average" />}
      {isFigure(burnEnd) && (
        <line x1={x(burnEnd)} y1={base} x2={x(burnEnd)} y2={10} className="thin dash thrust-burnout" />
      )}
      {end && (
        <text x={end.x} y={end.y} className="tick halo" textAnchor={end.anchor}>
          {`burnout ${secondsWords(burnEnd)}`}
        </text>
      )}
      {mean !== null && label && (
        <text x={label.x} y={label.y} className="tick halo" textAnchor={label.anchor}>
          {`average ${amount(averageThrust, "force", units)}`}
        </text>
      )}
      <text x={left + 4} y={13 * grow} className="tick halo">
        {amountParts(0, "force", units).unit}
      </text>
    </>
  );
  return { height, marks };
}

/** Places for the words of burnout and average, clear of the curve where there is room. */
function placeWords(
  { burnEnd, averageThrust, units }: ThrustCurveProps,
  points: readonly Point[],
  burnX: number,
  mean: number | null,
  { width, grow, left, base }: { width: number; grow: number; left: number; base: number },
) {
  const size = 12 * grow;
  const curve = points.map(([x, y]) => ({
    box: { left: x - 5, right: x + 5, top: y - 4, bottom: y + 4 },
    weight: 3,
  }));
  const dashed = { box: { left: burnX - 2, right: burnX + 2, top: 10, bottom: base }, weight: 3 };
  const corner = { box: { left, right: left + 16 * grow, top: 0, bottom: 16 * grow }, weight: 20 };
  const level = mean ?? base;
  const line = { box: { left, right: burnX, top: level - 2, bottom: level + 2 }, weight: 3 };
  const labels = [
    {
      lines: [{ words: `burnout ${secondsWords(burnEnd)}`, size }],
      spots: [14, 30, 46, 60].flatMap((y) => [
        { x: burnX + 5, y: y * grow, anchor: "start" as const },
        { x: burnX - 5, y: y * grow, anchor: "end" as const },
      ]),
    },
    {
      lines: [{ words: `average ${amount(averageThrust, "force", units)}`, size }],
      spots: [0.3, 0.5, 0.15, 0.7].flatMap((share) => [
        { x: left + (burnX - left) * share, y: level + size + 3, anchor: "middle" as const },
        { x: left + (burnX - left) * share, y: level - 5, anchor: "middle" as const },
      ]),
    },
  ];
  return placeLabels(labels, [...curve, dashed, corner, line], { left, top: 0, right: width, bottom: base - 1 });
}
