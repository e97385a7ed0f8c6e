/**
 * Harness lengths that flyers choose, over the length of the rocket.
 *
 * @source common practice, no source
 */
export const usualHarnessRatios = Object.freeze({ least: 3, most: 5 });

/** A harness length against the habit. */
export type HarnessCode = "shorter-than-usual" | "usual" | "longer-than-usual";

/**
 * Range of harness lengths for a rocket.
 *
 * A long harness lets the parts slow down before they come to its end; no load is computed from it.
 *
 * @param rocketLength [m], > 0
 * @returns [m]
 * @source `usualHarnessRatios`; common practice, no source
 * @example
 * usualHarnessLength(1.5); // { least: 4.5, most: 7.5 }
 */
export function usualHarnessLength(rocketLength: number): { readonly least: number; readonly most: number } {
  return { least: usualHarnessRatios.least * rocketLength, most: usualHarnessRatios.most * rocketLength };
}

/**
 * Whether a harness is as long as flyers choose it; the range's ends belong to it.
 *
 * @param lengths of harness and rocket [m], > 0
 * @source `usualHarnessLength`; common practice, no source
 * @example
 * harnessCode({ harness: 4, rocket: 1.5 }); // "shorter-than-usual"
 */
export function harnessCode({ harness, rocket }: { readonly harness: number; readonly rocket: number }): HarnessCode {
  const { least, most } = usualHarnessLength(rocket);
  if (harness < least) return "shorter-than-usual";
  return harness > most ? "longer-than-usual" : "usual";
}
