import type { GroundPoint, Zone } from "./landing-zone.js";

/**
 * Smallest width of a piece of ground: the narrowest gap between two parallel lines that hold all of it.
 *
 * For a circle its diameter. Of a convex polygon one of the two lines lies along an edge, so the least over the edges of the
 * farthest corner's distance is exact. Of a polygon that is not convex it would be no less than what the ground really offers
 * between its dents, so it is not told.
 *
 * @returns [m]; null for a polygon that is not convex, crosses itself, or has no area
 * @source convex polygons: M. E. Houle and G. T. Toussaint, Computing the width of a set (1988), an edge supports the least width; memory
 * @example
 * smallestWidth({ kind: "circle", east: 0, north: 0, radius: 400 }); // 800
 */
export function smallestWidth(zone: Zone): number | null {
  if (zone.kind === "circle") return 2 * zone.radius;
  const { points } = zone;
  if (!isConvex(points)) return null;
  return Math.min(
    ...points.map((from, i) => {
      const to = points[(i + 1) % points.length]!;
      return Math.max(...points.map((corner) => Math.abs(turn(from, to, corner)))) / length(from, to);
    }),
  );
}

function length(from: GroundPoint, to: GroundPoint): number {
  return Math.hypot(to.east - from.east, to.north - from.north);
}

/** Twice the area of the triangle, positive where `corner` lies to the left of the way. */
function turn(from: GroundPoint, to: GroundPoint, corner: GroundPoint): number {
  return (to.east - from.east) * (corner.north - from.north) - (to.north - from.north) * (corner.east - from.east);
}

/** Turns one way only, once around, with no corner twice. */
function isConvex(points: readonly GroundPoint[]): boolean {
  const count = points.length;
  const at = (i: number): GroundPoint => points[i % count]!;
  let around = 0;
  let left = 0;
  let right = 0;
  for (let i = 0; i < count; i++) {
    const [a, b, c] = [at(i), at(i + 1), at(i + 2)];
    const area = turn(a, b, c);
    if (length(a, b) === 0) return false;
    if (area > 0) left += 1;
    if (area < 0) right += 1;
    const along = (b.east - a.east) * (c.east - b.east) + (b.north - a.north) * (c.north - b.north);
    around += Math.atan2(area, along);
  }
  return left + right > 0 && left * right === 0 && Math.abs(Math.abs(around) - 2 * Math.PI) < 1e-6;
}
