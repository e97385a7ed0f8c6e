import type { Vec3 } from "../../math/vec3.js";

/** Attitude as a quaternion (w, x, y, z) that turns body axes into the world: body x towards the nose; upright, y is east and z north. */
export type Attitude = readonly [w: number, x: number, y: number, z: number];

/**
 * Attitude of a body that was tilted from the upright by the shortest turn, without roll.
 *
 * @param axis unit vector towards the nose; not straight down
 * @returns unit quaternion
 * @example
 * noseAxis(attitudeAlong([0, 0, 1])); // [0, 0, 1]
 */
export function attitudeAlong(axis: Vec3): Attitude {
  // upright: body x, y, z are up, east, north, a third of a turn about their common diagonal
  const upright: Attitude = [0.5, -0.5, -0.5, -0.5];
  const w = Math.sqrt(0.5 * (1 + axis[2]));
  const tilt: Attitude = [w, (-0.5 * axis[1]) / w, (0.5 * axis[0]) / w, 0];
  return times(tilt, upright);
}

/** Product of two turns, the right one first. */
function times(a: Attitude, b: Attitude): Attitude {
  return [
    a[0] * b[0] - a[1] * b[1] - a[2] * b[2] - a[3] * b[3],
    a[0] * b[1] + a[1] * b[0] + a[2] * b[3] - a[3] * b[2],
    a[0] * b[2] - a[1] * b[3] + a[2] * b[0] + a[3] * b[1],
    a[0] * b[3] + a[1] * b[2] - a[2] * b[1] + a[3] * b[0],
  ];
}

/**
 * Unit vector towards the nose.
 *
 * @param q of any length but zero
 */
export function noseAxis([w, x, y, z]: Attitude): Vec3 {
  const s = 2 / (w * w + x * x + y * y + z * z);
  return [1 - s * (y * y + z * z), s * (x * y + w * z), s * (x * z - w * y)];
}

/** Unit vectors of body y and z in the world. */
export function sideAxes([w, x, y, z]: Attitude): readonly [Vec3, Vec3] {
  const s = 2 / (w * w + x * x + y * y + z * z);
  return [
    [s * (x * y - w * z), 1 - s * (x * x + z * z), s * (y * z + w * x)],
    [s * (x * z + w * y), s * (y * z - w * x), 1 - s * (x * x + y * y)],
  ];
}
