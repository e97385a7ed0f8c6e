/** Numbers a row in `k`: the largest state. */
export const rowSize = 10;

/** Numbers a recorded step: start, length, place, then five coefficients each for height and the three velocities. */
export const recordSize = 24;

/** Most steps kept after burnout; a flight that needs more is given up as unfinished. */
export const mostRecords = 1024;

/** Numbers a stretch of the thrust curve: from, to, thrust, its slope, impulse before it, 1 before the curve's last point. */
export const stretchSize = 6;
