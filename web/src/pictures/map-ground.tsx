import type { FieldZones, UnitSystem } from "@delaywright/documents";
import type { ReactNode } from "react";
import { amount } from "./figures.js";
import {
  ellipsePoints,
  type MapEllipse,
  type MapPlace,
  type MapView,
  niceBelow,
  pathOf,
  scaleBar,
} from "./map-view.js";
import type { MapCloud } from "./map-words.js";
import { type Box, labelBox, overlap, type Spot } from "./place-labels.js";

/** Length of the unit that distances are shown in [m]. */
export function distanceUnit(units: UnitSystem): number {
  return units === "metric" ? 1 : 0.3048;
}

/** The field's edge. */
export function BoundaryLine({ view, zones }: { view: MapView; zones: FieldZones }): ReactNode {
  const { boundary } = zones;
  if (boundary === null) return null;
  if (boundary.kind === "polygon") return <path d={pathOf(view, boundary.points, true)} className="field" />;
  return (
    <circle
      cx={view.x(boundary.east)}
      cy={view.y(boundary.north)}
      r={Math.max(0, boundary.radius * view.pixels)}
      className="field"
    />
  );
}

/** Radii of the rings where there is no field [m]: about three, round in the flyer's unit. */
export function ringRadii(view: MapView, units: UnitSystem): readonly number[] {
  const unit = distanceUnit(units);
  const step = niceBelow(Math.hypot(view.width, view.height) / 2 / view.pixels / unit / 2.5);
  const most = Math.hypot(view.width, view.height) / view.pixels / unit;
  return [1, 2, 3, 4, 5, 6]
    .map((count) => count * step)
    .filter((radius) => radius < most)
    .map((radius) => radius * unit);
}

/** Distances from the pad, where there is no field; a ring's word is left out where it would meet other words. */
export function Rings({
  view,
  units,
  size,
  corners,
}: {
  view: MapView;
  units: UnitSystem;
  size: number;
  corners: readonly Box[];
}): ReactNode {
  const [x, y] = [view.x(0), view.y(0)];
  const bounds: Box = { left: 0, top: 0, right: view.width, bottom: view.height };
  return ringRadii(view, units).map((radius) => {
    const r = radius * view.pixels;
    const words = amount(radius, "distance", units, radius < 5 ? 1 : 0);
    const spots = [y - r - 3, y + r - 3].map((at): Spot => ({ x, y: at, anchor: "middle" }));
    const spot = spots.find((each) => {
      const box = labelBox([{ words, size }], each);
      const whole = box.left > 0 && box.top > 0 && box.right < bounds.right && box.bottom < bounds.bottom;
      return whole && corners.every((corner) => overlap(box, corner) === 0);
    });
    return (
      <g key={radius}>
        <circle cx={x} cy={y} r={r} className="thin dash" />
        {spot && (
          <text x={spot.x} y={spot.y} className="tick halo" textAnchor="middle">
            {words}
          </text>
        )}
      </g>
    );
  });
}

/** Where nothing may come down, solid, and people as a row of dots. */
export function Zones({ view, zones }: { view: MapView; zones: FieldZones }): ReactNode {
  return (
    <>
      {zones.keepOff.map(({ name, points }, i) => (
        <path key={`${name}-${i.toString()}`} d={pathOf(view, points, true)} className="keep-off map-keep-off" />
      ))}
      {zones.people.map(({ name, points }, i) =>
        points.length === 1 ? (
          <circle
            key={`${name}-${i.toString()}`}
            cx={view.x(points[0]?.east ?? 0)}
            cy={view.y(points[0]?.north ?? 0)}
            r={3.5}
            className="solid"
          />
        ) : (
          <path key={`${name}-${i.toString()}`} d={pathOf(view, points, false)} className="people" />
        ),
      )}
    </>
  );
}

/** An ellipse as a path. */
export function EllipseLine({ view, ellipse, kind }: { view: MapView; ellipse: MapEllipse; kind: string }): ReactNode {
  return <path d={pathOf(view, ellipsePoints(ellipse), true)} className={kind} />;
}

/** Opened landings are dots, unopened ones crosses. */
export function Scatter({
  view,
  points,
  opened,
  size,
}: {
  view: MapView;
  points: readonly MapPlace[];
  opened: boolean;
  size: number;
}): ReactNode {
  return points.map(({ east, north }, i) => {
    const [x, y] = [view.x(east), view.y(north)];
    const key = i.toString();
    if (opened) return <circle key={key} cx={x.toFixed(1)} cy={y.toFixed(1)} r={size} className="open-clean" />;
    const d = `M${(x - size).toFixed(1)} ${(y - size).toFixed(1)}l${2 * size} ${2 * size}m0 ${-2 * size}l${-2 * size} ${2 * size}`;
    return <path key={key} d={d} className="map-cross" />;
  });
}

interface CloudsProps {
  readonly view: MapView;
  readonly opened: MapCloud;
  readonly unopened: MapCloud;
  /** Without dots and inner rings, to be read at a glance. */
  readonly glance: boolean;
}

/** The ground that both clouds take up: the crossed hatch of unopened landings lies over the tint of opened ones. */
export function CloudTints({ view, opened, unopened, glance }: CloudsProps): ReactNode {
  return (
    <>
      {opened.outer && <EllipseLine view={view} ellipse={opened.outer} kind="zone-opened" />}
      {opened.inner && glance && <EllipseLine view={view} ellipse={opened.inner} kind="ring-opened full" />}
      {unopened.outer && <EllipseLine view={view} ellipse={unopened.outer} kind="zone-unopened map-unopened" />}
    </>
  );
}

/** Edges and points of both clouds. */
export function CloudMarks({ view, opened, unopened, glance }: CloudsProps): ReactNode {
  const dots = !glance || opened.outer === null;
  return (
    <>
      {opened.middle && (
        <line
          x1={view.x(0)}
          y1={view.y(0)}
          x2={view.x(opened.middle.east)}
          y2={view.y(opened.middle.north)}
          className="thin dash"
        />
      )}
      {unopened.inner && !glance && (
        <>
          <EllipseLine view={view} ellipse={unopened.inner} kind="ring-back" />
          <EllipseLine view={view} ellipse={unopened.inner} kind="ring-unopened" />
        </>
      )}
      {unopened.outer === null && <Scatter view={view} points={unopened.points} opened={false} size={4} />}
      {opened.outer && <EllipseLine view={view} ellipse={opened.outer} kind="map-opened-edge" />}
      {opened.inner && !glance && <EllipseLine view={view} ellipse={opened.inner} kind="ring-opened" />}
      {dots && <Scatter view={view} points={opened.points} opened={true} size={opened.outer === null ? 3.5 : 1.3} />}
    </>
  );
}

/** The pad: a triangle on its point of the field. */
export function PadMark({ view }: { view: MapView }): ReactNode {
  return <path d={`M${(view.x(0) - 7).toFixed(1)} ${(view.y(0) + 6).toFixed(1)}h14l-7 -13z`} className="pad" />;
}

/** Where the wind blows to, from a corner; nothing in a calm. @param from azimuth that it blows from [rad] */
export function WindArrow({ from, x, y }: { from: number | null; x: number; y: number }): ReactNode {
  if (from === null || !Number.isFinite(from)) return null;
  const [ux, uy] = [-Math.sin(from), Math.cos(from)];
  const half = 21;
  const [tailX, tailY] = [x - half * ux, y - half * uy];
  const [headX, headY] = [x + half * ux, y + half * uy];
  const n = (value: number): string => value.toFixed(1);
  return (
    <g className="map-wind">
      <line x1={n(tailX)} y1={n(tailY)} x2={n(headX - 10 * ux)} y2={n(headY - 10 * uy)} className="wind" />
      <path
        d={`M${n(headX)} ${n(headY)}L${n(headX - 13 * ux - 5 * uy)} ${n(headY - 13 * uy + 5 * ux)}L${n(headX - 13 * ux + 5 * uy)} ${n(headY - 13 * uy - 5 * ux)}Z`}
        className="solid"
      />
    </g>
  );
}

/** North, in the upper right corner. */
export function NorthArrow({ x, y }: { x: number; y: number }): ReactNode {
  return (
    <g>
      <line x1={x} y1={y + 26} x2={x} y2={y + 4} className="axis" />
      <path d={`M${x} ${y}l-4 8h8z`} className="solid" />
      <text x={x - 8} y={y + 15} className="value" textAnchor="end">
        N
      </text>
    </g>
  );
}

/** A round distance at scale, in the lower right corner. */
export function ScaleBar({ view, units, x, y }: { view: MapView; units: UnitSystem; x: number; y: number }): ReactNode {
  const unit = distanceUnit(units);
  const bar = scaleBar(view.pixels, view.width * 0.22, unit);
  return (
    <g className="map-scale">
      <line x1={x - bar.length} y1={y} x2={x} y2={y} className="axis" />
      <line x1={x - bar.length} y1={y - 4} x2={x - bar.length} y2={y + 4} className="axis" />
      <line x1={x} y1={y - 4} x2={x} y2={y + 4} className="axis" />
      <text x={x} y={y - 6} className="tick halo" textAnchor="end">
        {amount(bar.units * unit, "distance", units, bar.units < 1 ? 1 : 0)}
      </text>
    </g>
  );
}

/** The name of a zone sits on it where it fits, else it wants a place beside. */
export function fitsInside(view: MapView, points: readonly MapPlace[], width: number, height: number): boolean {
  const xs = points.map((point) => view.x(point.east));
  const ys = points.map((point) => view.y(point.north));
  const [across, along] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
  // an outline fills its box by half at least where it is a triangle
  const share = Math.abs(ringArea(points)) * view.pixels ** 2 > 0.75 * across * along ? 0.95 : 0.55;
  return width < across * share && height < along * share;
}

function ringArea(points: readonly MapPlace[]): number {
  return (
    points.reduce((sum, a, i) => {
      const b = points[(i + 1) % points.length] ?? a;
      return sum + a.east * b.north - b.east * a.north;
    }, 0) / 2
  );
}
