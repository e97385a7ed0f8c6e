/**
 * Index of the piece of a piecewise curve that holds a time: the last point at or before it, by bisection.
 *
 * @param times rising, length n ≥ 2
 * @param time between the first and the last of them
 * @returns 0…n-2
 */
export function segmentAt(times: ArrayLike<number>, time: number): number {
  let low = 0;
  let high = times.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (times[middle]! <= time) low = middle;
    else high = middle;
  }
  return low;
}
