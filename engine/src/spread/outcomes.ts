/** Numbers a draw and setting: six outcomes in their order, holds, fires first. */
export const judgedSize = 8;
export const CLEAN = 0;
export const EARLY_FAST = 1;
export const LATE_FAST = 2;
export const LEAN_FAST = 3;
export const LOW = 4;
export const GROUNDED = 5;
export const HOLDS = 6;
export const FIRES_FIRST = 7;

/** Numbers an opening sample: airspeed, height, seconds after apogee; NaN where grounded. */
export const sampleSize = 3;
