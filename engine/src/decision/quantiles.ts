/** Fewer values are put in order as a whole. */
const few = 64;
/** Values a shelf holds on average, and the most shelves there are. */
const valuesPerShelf = 8;
const mostShelves = 4096;

/**
 * Quantiles of values in any order, linear between neighbours: only the values near them are put in order.
 *
 * Values are counted by shelves of equal width, then those of the shelves that hold a wanted rank are sorted.
 *
 * @param values at least one, none NaN; left as they are
 * @param shares of the values that lie below, 0…1
 * @returns one quantile a share, in the unit of the values
 * @source distribution counting: D. E. Knuth, The Art of Computer Programming 3 (1973), 5.2, algorithm D; memory
 * @example
 * quantilesOf(Float64Array.of(8, 1, 4, 2), [0.5, 0.75]); // [3, 5]
 */
export function quantilesOf(values: Float64Array, shares: readonly number[]): number[] {
  const last = values.length - 1;
  const at = ranked(
    values,
    shares.flatMap((share) => {
      const below = Math.floor(share * last);
      return [below, Math.min(below + 1, last)];
    }),
  );
  return shares.map((share) => {
    const place = share * last;
    const below = Math.floor(place);
    const low = at(below);
    return low + (place - below) * (at(Math.min(below + 1, last)) - low);
  });
}

/** Finds the values of the wanted ranks, 0 the least. */
function ranked(values: Float64Array, ranks: readonly number[]): (rank: number) => number {
  const shelves = few < values.length ? shelvesOf(values) : null;
  if (shelves === null) {
    const sorted = Float64Array.from(values).sort();
    return (rank) => sorted[rank]!;
  }
  const { shelfOf, firstRank } = shelves;
  const sorted = new Map<number, Float64Array>();
  const shelfWith = (rank: number): number => {
    let [low, high] = [0, firstRank.length - 2];
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (firstRank[middle]! <= rank) low = middle;
      else high = middle - 1;
    }
    return low;
  };
  const filled = new Uint32Array(firstRank.length - 1);
  const wanted = new Uint8Array(firstRank.length - 1);
  for (const shelf of ranks.map(shelfWith)) {
    if (wanted[shelf] === 0) sorted.set(shelf, new Float64Array(firstRank[shelf + 1]! - firstRank[shelf]!));
    wanted[shelf] = 1;
  }
  for (let i = 0; i < values.length; i++) {
    const shelf = shelfOf[i]!;
    if (wanted[shelf] === 0) continue;
    sorted.get(shelf)![filled[shelf]!++] = values[i]!;
  }
  for (const row of sorted.values()) row.sort();
  return (rank) => {
    const shelf = shelfWith(rank);
    return sorted.get(shelf)![rank - firstRank[shelf]!]!;
  };
}

/** On which shelf each value lies, and the rank of the first on each; null where they cannot be told apart by width. */
function shelvesOf(values: Float64Array): { readonly shelfOf: Uint16Array; readonly firstRank: Uint32Array } | null {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < values.length; i++) {
    const value = values[i]!;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  const count = Math.min(mostShelves, Math.ceil(values.length / valuesPerShelf));
  const perUnit = count / (most - least);
  if (!(perUnit > 0 && perUnit < Number.POSITIVE_INFINITY)) return null;
  const shelfOf = new Uint16Array(values.length);
  const firstRank = new Uint32Array(count + 1);
  for (let i = 0; i < values.length; i++) {
    const shelf = Math.min(count - 1, Math.floor((values[i]! - least) * perUnit));
    shelfOf[i] = shelf;
    firstRank[shelf + 1]! += 1;
  }
  for (let shelf = 0; shelf < count; shelf++) firstRank[shelf + 1]! += firstRank[shelf]!;
  return { shelfOf, firstRank };
}
