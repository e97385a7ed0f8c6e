import { type BoxGrid, boxInfluences } from "./box-grid.js";

/**
 * Wave drag of a thin fin beside its mirror image, whose facets lean by one unit of slope.
 *
 * @param facing boxes' shares that face the flow
 * @param leaving boxes' shares that turn away from it, on the same grid
 * @returns of both sides of one fin, for a slope of 1: coefficient times area [m²], multiply by the slope squared; an error of first
 * order in the boxes' size
 * @source linear theory as for `supersonicLift`, where the sources are known from the start; D/q = −4 ∬ φₓ (dz/dx) dx dy
 */
export function thicknessDrag(facing: BoxGrid, leaving: BoxGrid): number {
  const { count, size } = facing;
  const influence = boxInfluences(count);
  const slopes = new Float64Array(count * count);
  for (let i = 0; i < count; i++)
    for (let j = 0; j <= i; j++) {
      const slope = facing.covered[i * count + j]! - leaving.covered[i * count + j]!;
      slopes[i * count + j] = slope;
      slopes[j * count + i] = slope;
    }
  const strips = new Float64Array(count);
  const rows = new Float64Array(count);
  const scale = (2 * size) / Math.PI;
  let drag = 0;
  for (let i = 0; i < count; i++) {
    rows.fill(0);
    for (let k = 0; k <= i; k++) {
      const weight = influence[i - k]!;
      for (let l = 0; l <= i; l++) rows[l]! += weight * slopes[k * count + l]!;
    }
    for (let j = 0; j <= i; j++) {
      let sum = 0;
      for (let l = 0; l <= j; l++) sum += influence[j - l]! * rows[l]!;
      const after = scale * sum;
      drag += (after - strips[i - j]!) * slopes[i * count + j]! * (i === j ? 0.5 : 1);
      strips[i - j] = after;
    }
  }
  return 2 * size * drag;
}
