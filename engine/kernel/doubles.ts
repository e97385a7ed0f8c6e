/** A row of numbers in memory: its own address. */
@unmanaged
@final
export class Doubles {
  @inline
  @operator("[]")
  at(i: i32): f64 {
    return load<f64>(changetype<usize>(this) + (<usize>i << 3));
  }

  @inline
  @operator("[]=")
  put(i: i32, value: f64): void {
    store<f64>(changetype<usize>(this) + (<usize>i << 3), value);
  }
}

/** Cell of a table in which a place ≥ 0 lies, as an integer: beyond the last one, the last. */
@inline
export function cellOf(place: f64, last: i32): i32 {
  return i32(Math.min(place, last));
}

/** A whole number that stands in a row. */
@inline
export function whole(value: f64): i32 {
  return i32(value);
}
