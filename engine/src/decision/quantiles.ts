/**
 * Quantiles of values in any order, linear between neighbours, by selection: no full sort.
 *
 * @param values at least one, none NaN; rearranged in place
 * @param shares of the values that lie below, rising, 0…1
 * @returns one quantile a share, in the unit of the values
 * @source selection by partition: C. A. R. Hoare, Communications of the ACM 4 (1961), algorithm 65; memory
 * @example
 * quantilesOf(Float64Array.of(8, 1, 4, 2), [0.5, 0.75]); // [3, 5]
 */
export function quantilesOf(values: Float64Array, shares: readonly number[]): number[] {
  const last = values.length - 1;
  // everything before `from` is at most what follows
  let from = 0;
  return shares.map((share) => {
    const place = share * last;
    const below = Math.floor(place);
    if (below >= from) {
      select(values, below, from, last);
      if (below < last) leastFirst(values, below + 1);
      from = below + 1;
    }
    const low = values[below]!;
    return low + (place - below) * (values[Math.min(below + 1, last)]! - low);
  });
}

/** Brings the value of rank `k` to its place, no greater ones before it and no lesser ones after. */
function select(values: Float64Array, k: number, from: number, to: number): void {
  let low = from;
  let high = to;
  while (low < high) {
    const pivot = middleOf(values[low]!, values[(low + high) >> 1]!, values[high]!);
    let i = low;
    let j = high;
    while (i <= j) {
      while (values[i]! < pivot) i += 1;
      while (values[j]! > pivot) j -= 1;
      if (i > j) break;
      const swapped = values[i]!;
      values[i] = values[j]!;
      values[j] = swapped;
      i += 1;
      j -= 1;
    }
    if (k <= j) high = j;
    else if (k >= i) low = i;
    else return;
  }
}

function middleOf(a: number, b: number, c: number): number {
  return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
}

/** Brings the least of the values from `from` on to the front of them. */
function leastFirst(values: Float64Array, from: number): void {
  let least = from;
  for (let i = from + 1; i < values.length; i++) if (values[i]! < values[least]!) least = i;
  const first = values[from]!;
  values[from] = values[least]!;
  values[least] = first;
}
