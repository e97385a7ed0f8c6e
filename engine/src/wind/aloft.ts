import type { Vec3 } from "../math/vec3.js";
import type { AloftWind } from "./profile.js";

/**
 * The wind of a winds-aloft table: linear in its east and north parts between rows, constant beyond the ends, so the
 * first row holds down to the ground.
 *
 * @param profile rows at rising heights, at least one
 * @returns a function of height above the pad [m] that gives where the air goes [m/s]
 * @example
 * aloftWind({ kind: "aloft", heights: [0, 100], east: [2, 6], north: [0, 0] })(50); // [4, 0, 0]
 */
export function aloftWind(profile: AloftWind): (z: number) => Vec3 {
  const { heights, east, north } = profile;
  const last = heights.length - 1;
  return (z) => {
    const above = heights.findIndex((height) => z < height);
    if (above === -1) return [east[last]!, north[last]!, 0];
    if (above === 0) return [east[0]!, north[0]!, 0];
    const below = above - 1;
    const part = (z - heights[below]!) / (heights[above]! - heights[below]!);
    return [
      east[below]! + (east[above]! - east[below]!) * part,
      north[below]! + (north[above]! - north[below]!) * part,
      0,
    ];
  };
}
