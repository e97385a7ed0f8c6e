/** One line of the table of truth. */
export interface TruthRow {
  readonly model: string;
  /** Published data or closed form. */
  readonly against: string;
  /** What was found, in words; a figure in it is measured when the table is made. */
  readonly found: () => string;
  /** Folder or file of the tests that hold it. */
  readonly where: string;
}

/** Rows under one heading. */
export interface TruthPart {
  readonly title: string;
  readonly rows: readonly TruthRow[];
}

/** Greatest relative difference of pairs (found, expected). */
export function worst(pairs: Iterable<readonly [found: number, expected: number]>): number {
  let greatest = 0;
  for (const [found, expected] of pairs) greatest = Math.max(greatest, Math.abs(found / expected - 1));
  return greatest;
}

/** Greatest difference of pairs (found, expected). */
export function apart(pairs: Iterable<readonly [found: number, expected: number]>): number {
  let greatest = 0;
  for (const [found, expected] of pairs) greatest = Math.max(greatest, Math.abs(found - expected));
  return greatest;
}

/** A small figure as the power of ten above it, so that the last bits of an engine do not change the page. */
const below = (value: number, unit: string) => `below 1e${Math.ceil(Math.log10(Math.max(value, 1e-13)) + 0.05)}${unit}`;

/** A relative difference: in per cent, or below a power of ten. */
export function told(difference: number): string {
  return difference < 1e-4 ? below(difference, "") : `${Number((100 * difference).toPrecision(2))} %`;
}

/** A difference with its unit. */
export function toldIn(difference: number, unit: string): string {
  return difference < 1e-3 ? below(difference, ` ${unit}`) : `${Number(difference.toPrecision(2))} ${unit}`;
}
