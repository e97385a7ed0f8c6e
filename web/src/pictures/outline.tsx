import type { OutlinePoints } from "@delaywright/engine";
import type { ReactNode } from "react";
import { amount } from "./figures.js";
import type { OutlineProps } from "./outline-props.js";
import { calibresOf, type Mark, marksOf, Ruler, rowsBelow } from "./outline-ruler.js";
import { type Drawing, Picture, type PictureRoom } from "./picture.js";
import { isFigure, linePath, type Point, type Scale, scaleOf, ticksOf } from "./scale.js";
import "./outline.css";

/** Tallest drawing of the rocket itself [px]: a stubby one is drawn smaller, not out of scale. */
const TALLEST = 200;

/** The rocket's outline to scale from what was measured, on a ruler: a slip in a measurement shows. */
export function Outline(props: OutlineProps): ReactNode {
  return (
    <Picture
      name="outline"
      title="Rocket outline"
      description={sentences(props)}
      draw={(room) => drawOutline(props, room)}
    />
  );
}

function sentences(props: OutlineProps): string {
  const { length, diameter, motorAftAt, balanceWithoutMotor, balanceReady, cp, outline, units } = props;
  const at = (value: number | null): string =>
    isFigure(value) ? `${amount(value, "length", units)} from the nose tip` : "not known";
  const calibres = calibresOf(props);
  const said = [
    `Length ${amount(length, "length", units)}, diameter ${amount(diameter, "length", units)}.`,
    `Balance point without motor ${at(balanceWithoutMotor)}, ready to fly ${at(balanceReady)}; centre of pressure ${at(cp)}.`,
  ];
  if (calibres !== null)
    said.push(
      calibres >= 0
        ? `The centre of pressure lies ${calibres.toFixed(1)} calibres behind the ready balance point.`
        : `The centre of pressure lies ${(-calibres).toFixed(1)} calibres ahead of the ready balance point.`,
    );
  const sets = outline.fins.length;
  said.push(sets === 0 ? "It has no fins." : `It has ${sets} set${sets === 1 ? "" : "s"} of fins.`);
  if (isFigure(motorAftAt)) said.push(`The motor's aft end lies ${at(motorAftAt)}.`);
  if (outline.fittings.length > 0)
    said.push(
      `Guide fittings at ${outline.fittings
        .filter(isFigure)
        .map((each) => amount(each, "length", units))
        .join(", ")}.`,
    );
  return said.join(" ");
}

/** From the nose tip to the farthest thing that is drawn [m], with what lies ahead of the tip. */
function spanOf(props: OutlineProps, marks: readonly Mark[]): { readonly from: number; readonly to: number } {
  const { outline, length, motorAftAt } = props;
  const stations = [
    0,
    length,
    motorAftAt ?? 0,
    ...outline.body.map(({ x }) => x),
    ...outline.fins.flatMap((fin) => fin.map(({ x }) => x)),
    ...outline.fittings,
    ...marks.map(({ at }) => at),
  ].filter(Number.isFinite);
  const [from, to] = [Math.min(...stations), Math.max(...stations)];
  return { from, to: to > from ? to : from + 1 };
}

function drawOutline(props: OutlineProps, room: PictureRoom): Drawing {
  const { outline, length, motorAftAt, units } = props;
  const { width, grow } = room;
  const marks = marksOf(props);
  const unit = units === "metric" ? 0.001 : 0.0254;
  const span = spanOf(props, marks);
  const ends = scaleTo(span, unit, width);
  const radii = [...outline.body.map(({ r }) => r), ...outline.fins.flatMap((fin) => fin.map(({ y }) => Math.abs(y)))];
  const tall = Math.max(0.001, ...radii.filter(Number.isFinite));
  const half = Math.max(0.001, ...outline.body.map(({ r }) => r).filter(Number.isFinite));
  const pixels = Math.min((width - 4) / (ends.to - ends.from), TALLEST / (2 * tall));
  const x = scaleOf(ends.from, ends.to, 2, 2 + pixels * (ends.to - ends.from));
  const middle = 4 + tall * pixels;
  const r = (value: number, side: 1 | -1): number => middle + side * value * pixels;
  const ruler = middle + tall * pixels + 12 * grow;
  const rows = rowsBelow(props, marks, x, ruler, room);
  const drawing = (
    <>
      {outline.fins.map((fin, i) => (
        <Fin key={i.toString()} points={fin} x={x} r={r} middle={middle} />
      ))}
      <path d={bodyPath(outline.body, x, r)} className="outline-body" />
      {jointsOf(outline.body).map((joint) => (
        <line key={joint.x} x1={x(joint.x)} y1={r(joint.r, -1)} x2={x(joint.x)} y2={r(joint.r, 1)} className="thin" />
      ))}
      {outline.fins.map((fin, i) => (
        <FinEdge key={i.toString()} points={fin} x={x} middle={middle} />
      ))}
      {outline.fittings.filter(isFigure).map((at, i) => {
        const below = r(radiusAt(outline.body, at), 1);
        const key = `${at}-${i.toString()}`;
        return <line key={key} x1={x(at)} y1={below} x2={x(at)} y2={below + 4} className="outline-fitting" />;
      })}
      {isFigure(motorAftAt) && (
        <line
          x1={x(motorAftAt)}
          y1={r(half * 0.55, -1)}
          x2={x(motorAftAt)}
          y2={r(half * 0.55, 1)}
          className="thin dash outline-motor"
        />
      )}
      <Ruler x={x} y={ruler} unit={unit} units={units} grow={grow} />
      {isFigure(length) && (
        <line x1={x(length)} y1={r(radiusAt(outline.body, length), 1)} x2={x(length)} y2={ruler + 9} className="thin" />
      )}
      {marks.map(({ name, at }, i) => (
        <line
          key={name}
          x1={x(at)}
          y1={r(half, -1) - 6}
          x2={x(at)}
          y2={rows.ticks[i] ?? ruler}
          className={`mark outline-${name}`}
        />
      ))}
      {rows.words}
    </>
  );
  return { height: rows.bottom, marks: drawing };
}

/** The ruler's ends: to the next round figure, so that its last word has its place. */
function scaleTo(span: { from: number; to: number }, unit: number, width: number): { from: number; to: number } {
  const steps = ticksOf(span.from / unit, span.to / unit, Math.max(2, Math.floor(width / 34)));
  const step = (steps[1] ?? 1) - (steps[0] ?? 0);
  if (!(step > 0)) return span;
  const up = (value: number): number => Math.ceil(value / unit / step - 1e-9) * step * unit;
  return { from: span.from < 0 ? -up(-span.from) : 0, to: up(span.to) };
}

function bodyPath(body: OutlinePoints["body"], x: Scale, r: (value: number, side: 1 | -1) => number): string {
  const upper: Point[] = body.map((point) => [x(point.x), r(point.r, -1)]);
  const lower: Point[] = body.map((point) => [x(point.x), r(point.r, 1)]);
  const path = linePath([...upper, ...lower.reverse()]);
  return path === "" ? "" : `${path}Z`;
}

/** Radius of the body at a station: between its points, outside them the nearest. */
function radiusAt(body: OutlinePoints["body"], at: number): number {
  for (let i = 1; i < body.length; i++) {
    const [a, b] = [body[i - 1], body[i]];
    if (a === undefined || b === undefined || at > b.x) continue;
    return b.x > a.x ? a.r + ((b.r - a.r) * Math.max(0, at - a.x)) / (b.x - a.x) : b.r;
  }
  return body.at(-1)?.r ?? 0;
}

/** Where the nose ends and where a change of diameter begins and ends: the slope breaks there. */
function jointsOf(body: OutlinePoints["body"]): OutlinePoints["body"] {
  return body.slice(1, -1).filter((point, i) => {
    const [before, after] = [body[i], body[i + 2]];
    if (before === undefined || after === undefined || after.x <= point.x || point.x <= before.x) return false;
    const [a, b] = [(point.r - before.r) / (point.x - before.x), (after.r - point.r) / (after.x - point.x)];
    const flat = (slope: number): boolean => Math.abs(slope) < 1e-9;
    return flat(a) !== flat(b) || (Math.abs(a - b) > 0.1 && i > body.length / 2);
  });
}

function Fin(props: {
  points: OutlinePoints["fins"][number];
  x: Scale;
  r: (value: number, side: 1 | -1) => number;
  middle: number;
}): ReactNode {
  const { points, x, r } = props;
  return ([-1, 1] as const).map((side) => {
    const path = linePath(points.map((point): Point => [x(point.x), r(point.y, side)]));
    return <path key={side} d={path === "" ? "" : `${path}Z`} className="outline-body outline-fin" />;
  });
}

/** A fin seen edge on: a line along the body. */
function FinEdge({
  points,
  x,
  middle,
}: {
  points: OutlinePoints["fins"][number];
  x: Scale;
  middle: number;
}): ReactNode {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return null;
  return <line x1={x(first.x)} y1={middle} x2={x(last.x)} y2={middle} className="thin" />;
}
