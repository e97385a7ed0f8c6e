/**
 * Heights as a bay with a first-order lag shows them, on equal steps; before the first it is taken to have moved as over the first step.
 *
 * @param heights [m], at least two, straight between the steps
 * @param step [s]
 * @param lag time constant [s]; 0: the heights themselves
 * @source exact for heights straight over each step: dy/dt = (h − y)/lag
 */
export function lagged(heights: Float64Array, step: number, lag: number): Float64Array {
  if (!(lag > 0)) return heights;
  const kept = Math.exp(-step / lag);
  const shown = new Float64Array(heights.length);
  let behind = ((heights[1]! - heights[0]!) / step) * lag;
  shown[0] = heights[0]! - behind;
  for (let i = 1; i < heights.length; i++) {
    const settled = ((heights[i]! - heights[i - 1]!) / step) * lag;
    behind = settled + (behind - settled) * kept;
    shown[i] = heights[i]! - behind;
  }
  return shown;
}
