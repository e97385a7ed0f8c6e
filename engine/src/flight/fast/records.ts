import type { Doubles, f64, i32 } from "../../math/doubles.js";

/** Value of a recorded component (0 height, 1 to 3 velocity) at a share of its step. */
export function recorded(records: Doubles, offset: i32, component: i32, share: f64): f64 {
  const o = offset + 4 + 5 * component;
  const rest = 1 - share;
  return (
    records[o]! +
    share * (records[o + 1]! + rest * (records[o + 2]! + share * (records[o + 3]! + rest * records[o + 4]!)))
  );
}

/** Share of a step at which a recorded component falls through a level: its ends lie on either side. */
export function recordedFall(records: Doubles, offset: i32, component: i32, level: f64): f64 {
  let low: f64 = 0;
  let high: f64 = 1;
  let valueLow = recorded(records, offset, component, 0) - level;
  let valueHigh = recorded(records, offset, component, 1) - level;
  for (let i = 0; i < 60 && high - low > 1e-9; i++) {
    const guess = i % 3 === 2 ? 0.5 * (low + high) : low + ((high - low) * valueLow) / (valueLow - valueHigh);
    const share = guess > low && guess < high ? guess : 0.5 * (low + high);
    const value = recorded(records, offset, component, share) - level;
    if (value === 0) return share;
    if (value > 0) {
      low = share;
      valueLow = value;
      if (i % 3 === 0) valueHigh *= 0.5;
    } else {
      high = share;
      valueHigh = value;
    }
  }
  return 0.5 * (low + high);
}

/** Place over ground at a share of a recorded step: three-point Gauss over the recorded velocity, exact for it. */
export function placeAt(records: Doubles, offset: i32, axis: i32, share: f64): f64 {
  const half = 0.5 * share;
  const reach = half * Math.sqrt(0.6);
  const sum =
    (5 * recorded(records, offset, 1 + axis, half - reach) +
      8 * recorded(records, offset, 1 + axis, half) +
      5 * recorded(records, offset, 1 + axis, half + reach)) /
    18;
  return records[offset + 2 + axis]! + sum * share * records[offset + 1]!;
}
