import type { FieldZones } from "@delaywright/documents";
import { aroundCircle, ellipsePoints, type MapPlace, type MapView, type Margins, mapView } from "./map-view.js";
import type { MapCloud } from "./map-words.js";
import type { Box } from "./place-labels.js";

/** Points along an outline, close enough to tell whether it runs under something. */
function along(points: readonly MapPlace[], closed: boolean): readonly MapPlace[] {
  const last = closed ? points.length : points.length - 1;
  if (points.length < 2) return points;
  return Array.from({ length: last }, (_, i) => {
    const [a, b] = [points[i], points[(i + 1) % points.length]];
    if (a === undefined || b === undefined) return [];
    return Array.from({ length: 12 }, (_unused, k) => ({
      east: a.east + ((b.east - a.east) * k) / 12,
      north: a.north + ((b.north - a.north) * k) / 12,
    }));
  }).flat();
}

/** Points along the field's edge. */
export function boundaryPoints(zones: FieldZones | null): readonly MapPlace[] {
  const boundary = zones?.boundary ?? null;
  if (boundary === null) return [];
  if (boundary.kind === "polygon") return along(boundary.points, true);
  const { east, north, radius } = boundary;
  return ellipsePoints({ east, north, major: radius, minor: radius, azimuth: 0 }, 96);
}

/** Points along keep-off zones and lines of people. */
export function zonePoints(zones: FieldZones | null): readonly MapPlace[] {
  if (zones === null) return [];
  const keepOff = zones.keepOff.flatMap(({ points }) => along(points, true));
  const people = zones.people.flatMap(({ points }) => [...along(points, false), ...points.slice(-1)]);
  return [...keepOff, ...people];
}

/** Everything that landings take up: the pad, ellipses and points. */
export function cloudPoints(clouds: readonly MapCloud[]): readonly MapPlace[] {
  return [
    { east: 0, north: 0 },
    ...clouds.flatMap(({ points, inner, outer }) => [
      ...points,
      ...(inner === null ? [] : ellipsePoints(inner)),
      ...(outer === null ? [] : ellipsePoints(outer)),
    ]),
  ];
}

/** Places to see, with room around them where they are few and close. */
export function withReach(places: readonly MapPlace[], least: number): readonly MapPlace[] {
  return [...places, ...aroundCircle({ east: 0, north: 0 }, least)];
}

/**
 * Height of a map of a width: a square, lower where what it shows lies in a row from west to east.
 *
 * @param places what must be seen
 * @param width [px]
 * @param strips room for words above and below [px]
 */
export function heightOf(places: readonly MapPlace[], width: number, strips: Margins): number {
  const span = (values: readonly number[]): number => {
    let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const value of values.filter(Number.isFinite)) [least, most] = [Math.min(least, value), Math.max(most, value)];
    return most > least ? most - least : 0;
  };
  const [across, along] = [span(places.map(({ east }) => east)), span(places.map(({ north }) => north))];
  if (across <= 0) return width;
  const needed = (width * along) / across + strips.top + strips.bottom + 60;
  return Math.min(width, Math.max(0.6 * width, needed));
}

/** A view with the corners used where they are free, else with a strip for their words above and below. */
export function framed(
  places: readonly MapPlace[],
  width: number,
  height: number,
  corners: readonly Box[],
  strips: Margins,
): { readonly view: MapView; readonly strips: boolean } {
  const edge = 5;
  const free = mapView(places, width, height, { left: edge, top: edge, right: edge, bottom: edge });
  const under = places.some(({ east, north }) => {
    const [x, y] = [free.x(east), free.y(north)];
    return corners.some((box) => x > box.left && x < box.right && y > box.top && y < box.bottom);
  });
  return under ? { view: mapView(places, width, height, strips), strips: true } : { view: free, strips: false };
}
