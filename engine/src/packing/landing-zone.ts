/** A place on the ground, east and north of the pad [m]. */
export interface GroundPoint {
  readonly east: number;
  readonly north: number;
}

/** A piece of ground: a circle, or a polygon whose last corner joins its first. */
export type Zone =
  | { readonly kind: "circle"; readonly east: number; readonly north: number; readonly radius: number }
  | { readonly kind: "polygon"; readonly points: readonly GroundPoint[] };

/** Places by columns: a row that is NaN is no place and is left out. */
export interface PlaceColumns {
  readonly east: ArrayLike<number>;
  readonly north: ArrayLike<number>;
}

/**
 * Does a polygon hold a point?
 *
 * A ray towards east crosses the outline an odd number of times. Corners may run either way round, and the polygon may be
 * concave; where it crosses itself, what is wound around twice counts as outside. An edge that faces west or south belongs to
 * the polygon, one that faces east or north does not: polygons that share an edge hold each of its points once.
 *
 * @param point [m]
 * @param polygon corners [m]; fewer than three hold nothing
 * @source crossing-number rule, common practice
 * @example
 * insidePolygon({ east: 1, north: 1 }, [{ east: 0, north: 0 }, { east: 3, north: 0 }, { east: 0, north: 3 }]); // true
 */
export function insidePolygon(point: GroundPoint, polygon: readonly GroundPoint[]): boolean {
  let inside = false;
  for (let i = 0, before = polygon.length - 1; i < polygon.length; before = i, i++) {
    const a = polygon[before]!;
    const b = polygon[i]!;
    if (a.north > point.north === b.north > point.north) continue;
    const crossing = a.east + ((point.north - a.north) / (b.north - a.north)) * (b.east - a.east);
    if (point.east < crossing) inside = !inside;
  }
  return inside;
}

/**
 * Does a zone hold a point? A circle holds its own edge, a polygon its edges as `insidePolygon` says.
 *
 * @param point [m]
 * @example
 * insideZone({ east: 30, north: 40 }, { kind: "circle", east: 0, north: 0, radius: 50 }); // true
 */
export function insideZone(point: GroundPoint, zone: Zone): boolean {
  return zone.kind === "circle"
    ? Math.hypot(point.east - zone.east, point.north - zone.north) <= zone.radius
    : insidePolygon(point, zone.points);
}

/**
 * Share of places that lie in a zone.
 *
 * @param places [m]; rows that are NaN count neither way
 * @returns 0…1; 0 where there is no place
 * @example
 * shareInside({ east: [0, 10, 60], north: [0, 0, 0] }, { kind: "circle", east: 0, north: 0, radius: 20 }); // 0.6666667
 */
export function shareInside(places: PlaceColumns, zone: Zone): number {
  const { inside, count } = countInside(places, [zone]);
  return count === 0 ? 0 : inside / count;
}

/**
 * Share of places that lie beyond a boundary.
 *
 * @param places [m]; rows that are NaN count neither way
 * @param boundary edge of the field
 * @returns 0…1; 0 where there is no place
 * @example
 * shareOutside({ east: [0, 10, 60], north: [0, 0, 0] }, { kind: "circle", east: 0, north: 0, radius: 20 }); // 0.3333333
 */
export function shareOutside(places: PlaceColumns, boundary: Zone): number {
  const { inside, count } = countInside(places, [boundary]);
  return count === 0 ? 0 : (count - inside) / count;
}

/**
 * Share of places that lie in any of some zones: where zones overlap a place counts once.
 *
 * @param places [m]; rows that are NaN count neither way
 * @returns 0…1; 0 where there is no place
 * @example
 * shareInAny({ east: [0, 10, 60], north: [0, 0, 0] }, [{ kind: "circle", east: 0, north: 0, radius: 5 }]); // 0.3333333
 */
export function shareInAny(places: PlaceColumns, zones: readonly Zone[]): number {
  const { inside, count } = countInside(places, zones);
  return count === 0 ? 0 : inside / count;
}

/** How many of the rows are places. */
export function countPlaces(places: PlaceColumns): number {
  return countInside(places, []).count;
}

function inAny(point: GroundPoint, zones: readonly Zone[]): boolean {
  for (const zone of zones) if (insideZone(point, zone)) return true;
  return false;
}

/** Places, and how many of them lie in any of the zones. */
function countInside(
  { east, north }: PlaceColumns,
  zones: readonly Zone[],
): { readonly inside: number; readonly count: number } {
  let [inside, count] = [0, 0];
  for (let i = 0; i < east.length; i++) {
    const point = { east: east[i]!, north: north[i]! };
    if (Number.isNaN(point.east) || Number.isNaN(point.north)) continue;
    count += 1;
    if (inAny(point, zones)) inside += 1;
  }
  return { inside, count };
}
