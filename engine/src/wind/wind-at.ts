import type { Vec3 } from "../math/vec3.js";
import { aloftWind } from "./aloft.js";
import { powerLawWind } from "./power-law.js";
import type { WindProfile } from "./profile.js";

/**
 * The wind over height, whatever the profile's kind.
 *
 * @param profile a power law, or winds aloft
 * @returns a function of height above the pad [m] that gives where the air goes [m/s]
 * @example
 * windAt({ kind: "aloft", heights: [0], east: [3], north: [4] })(500); // [3, 4, 0]
 */
export function windAt(profile: WindProfile): (z: number) => Vec3 {
  return profile.kind === "power" ? powerLawWind(profile) : aloftWind(profile);
}
