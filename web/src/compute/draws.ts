/** Draws of a settled answer. */
export const DRAWS = 10_000;
