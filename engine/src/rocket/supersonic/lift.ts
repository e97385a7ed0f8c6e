import { type BoxGrid, boxInfluences } from "./box-grid.js";

/** Lift of one flat fin in linear theory. */
export interface SupersonicLift {
  /** Slope times area [m²/rad]. */
  readonly slopeArea: number;
  /** Where it acts, from the root's leading edge [m]. */
  readonly at: number;
}

/**
 * Lift of a flat, thin fin beside its mirror image in supersonic flow, leading edges inside or outside the Mach cones.
 *
 * Boxes on the fin carry the downwash of the angle of attack; boxes off it carry what leaves the potential as it came, which is
 * nothing ahead of the fin and beside its tip, and the trailing edge's behind it. On boxes of both the two are mixed by area. Since the
 * influence is a product along the two families of Mach lines, a row at a time is enough.
 *
 * @param grid of the fin at this Mach number
 * @param beta √(M² − 1), > 0
 * @returns lift; an error of first order in the boxes' size
 * @source linear theory, φ = −(1/π)∬ w dx dy/√((x − x₁)² − β²(y − y₁)²), in Mach-line coordinates as used by J. C. Evvard, NACA
 * Report 951 (1950); boxes: own
 */
export function supersonicLift({ count, size, origin, covered }: BoxGrid, beta: number): SupersonicLift {
  const influence = boxInfluences(count);
  const wash = new Float64Array(count * count);
  const strips = new Float64Array(count);
  const earlier = new Float64Array(count);
  const scale = (2 * size) / Math.PI;
  let lift = 0;
  let moment = 0;
  for (let i = 0; i < count; i++) {
    earlier.fill(0);
    for (let k = 0; k < i; k++) {
      const weight = influence[i - k]!;
      for (let l = 0; l < i; l++) earlier[l]! += weight * wash[k * count + l]!;
    }
    for (let j = 0; j <= i; j++) {
      if (j === i) for (let k = 0; k < i; k++) earlier[i]! += influence[i - k]! * wash[k * count + i]!;
      let others = earlier[j]!;
      for (let l = 0; l < j; l++) others += influence[j - l]! * (earlier[l]! + wash[i * count + l]!);
      const before = strips[i - j]!;
      const share = covered[i * count + j]!;
      const here = share + (1 - share) * (before / scale - others);
      wash[i * count + j] = here;
      wash[j * count + i] = here;
      const after = scale * (others + here);
      strips[i - j] = after;
      const load = (after - before) * (i === j ? 0.5 : 1);
      lift += load;
      moment += load * (origin + (size * (i + j + 1)) / 2);
    }
  }
  return { slopeArea: 2 * size * lift, at: (beta * moment) / lift };
}
