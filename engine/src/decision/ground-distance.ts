import type { GroundPoint, Zone } from "../packing/landing-zone.js";
import { insideZone } from "../packing/landing-zone.js";

const pad: GroundPoint = { east: 0, north: 0 };

/** From the pad to the nearest point of a straight piece [m]. */
function toPiece(a: GroundPoint, b: GroundPoint): number {
  const [east, north] = [b.east - a.east, b.north - a.north];
  const squared = east * east + north * north;
  const share = squared === 0 ? 0 : Math.min(1, Math.max(0, -(a.east * east + a.north * north) / squared));
  return Math.hypot(a.east + share * east, a.north + share * north);
}

/**
 * From the pad to the nearest point of some lines [m]; a line of one point is that point.
 *
 * @returns undefined where there is none
 */
export function distanceToLines(lines: readonly (readonly GroundPoint[])[]): number | undefined {
  const distances = lines.flatMap((line) => line.map((point, i) => toPiece(line[i - 1] ?? point, point)));
  return distances.length === 0 ? undefined : Math.min(...distances);
}

/** From the pad to the nearest edge of a zone [m]; 0 where the pad is not inside. */
export function distanceToEdge(zone: Zone): number {
  if (!insideZone(pad, zone)) return 0;
  if (zone.kind === "circle") return zone.radius - Math.hypot(zone.east, zone.north);
  const { points } = zone;
  return Math.min(...points.map((point, i) => toPiece(points.at(i - 1) ?? point, point)));
}
