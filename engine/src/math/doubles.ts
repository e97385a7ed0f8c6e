/**
 * Kinds of numbers of code that is compiled twice: to JavaScript, where they are all numbers, and to WebAssembly, which has its own
 * names for them.
 */
export type f64 = number;
export type i32 = number;

/** A row of numbers in memory. */
export type Doubles = Float64Array;

/** Cell of a table in which a place ≥ 0 lies, as an integer: beyond the last one, the last. */
export function cellOf(place: f64, last: i32): i32 {
  return Math.min(place, last) | 0;
}

/** A whole number that stands in a row. */
export function whole(value: f64): i32 {
  return value | 0;
}
