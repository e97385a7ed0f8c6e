/**
 * Direction rows of Sobol' points: degree s, coefficient a, first direction integers m, for dimensions 2 to 24.
 *
 * @source S. Joe, F. Y. Kuo, SIAM J. Sci. Comput. 30 (2008), direction numbers "new-joe-kuo-6.21201"
 */
const rows: readonly (readonly [s: number, a: number, m: readonly number[]])[] = [
  [1, 0, [1]],
  [2, 1, [1, 3]],
  [3, 1, [1, 3, 1]],
  [3, 2, [1, 1, 1]],
  [4, 1, [1, 1, 3, 3]],
  [4, 4, [1, 3, 5, 13]],
  [5, 2, [1, 1, 5, 5, 17]],
  [5, 4, [1, 1, 5, 5, 5]],
  [5, 7, [1, 1, 7, 11, 19]],
  [5, 11, [1, 1, 5, 1, 1]],
  [5, 13, [1, 1, 1, 3, 11]],
  [5, 14, [1, 3, 5, 5, 31]],
  [6, 1, [1, 3, 3, 9, 7, 49]],
  [6, 13, [1, 1, 1, 15, 21, 21]],
  [6, 16, [1, 3, 1, 13, 27, 49]],
  [6, 19, [1, 1, 1, 15, 7, 5]],
  [6, 22, [1, 3, 1, 15, 13, 25]],
  [6, 25, [1, 1, 5, 5, 19, 61]],
  [7, 1, [1, 3, 7, 11, 23, 15, 103]],
  [7, 4, [1, 3, 7, 13, 13, 15, 69]],
  [7, 7, [1, 1, 3, 13, 7, 35, 63]],
  [7, 8, [1, 3, 5, 9, 1, 25, 53]],
  [7, 14, [1, 3, 1, 13, 9, 35, 107]],
];

const bits = 32;

/** Highest number of dimensions. */
export const sobolDimensions = rows.length + 1;

function directionsOf(dimension: number): Uint32Array {
  const v = new Uint32Array(bits);
  if (dimension === 0) {
    for (let i = 0; i < bits; i++) v[i] = 1 << (bits - 1 - i);
    return v;
  }
  const [s, a, m] = rows[dimension - 1] as (typeof rows)[number];
  for (let i = 0; i < s; i++) v[i] = (m[i] as number) << (bits - 1 - i);
  for (let i = s; i < bits; i++) {
    let value = v[i - s]! ^ (v[i - s]! >>> s);
    for (let k = 1; k < s; k++) if ((a >> (s - 1 - k)) & 1) value ^= v[i - k]!;
    v[i] = value;
  }
  return v;
}

const directions = Array.from({ length: sobolDimensions }, (_, d) => directionsOf(d));

/**
 * Point `index` of the Sobol' sequence in one dimension, as a 32-bit integer: divide by 2³² for [0, 1).
 *
 * Gray-code order, so that the first 2^k points are the same set as in natural order. Any point on its own: draws can be
 * shared among workers without an order.
 *
 * @param index ≥ 0, below 2³²
 * @param dimension 0 … `sobolDimensions` − 1
 * @example
 * sobolInteger(3, 1) / 2 ** 32; // 0.75
 */
export function sobolInteger(index: number, dimension: number): number {
  sobolIn(one, 0, index, dimension);
  return one[0]!;
}

const one = new Uint32Array(1);

/** Puts a `sobolInteger` into a row: as the result of a function it may be an object, in a row it never is. */
export function sobolIn(row: Uint32Array, at: number, index: number, dimension: number): void {
  const v = directions[dimension] as Uint32Array;
  let gray = index ^ (index >>> 1);
  let x = 0;
  for (let bit = 0; gray !== 0; bit++, gray >>>= 1) if (gray & 1) x ^= v[bit]!;
  row[at] = x;
}
