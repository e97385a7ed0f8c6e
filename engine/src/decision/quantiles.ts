import { Scratch } from "../math/scratch.js";

/** Fewer values are put in order as a whole. */
const few = 64;
/** Values a shelf holds on average, and the most shelves there are. */
const valuesPerShelf = 8;
const mostShelves = 4096;

const shelfRow = new Scratch((count) => new Uint16Array(count));
const rankRow = new Scratch((count) => new Uint32Array(count));

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
 * quantilesOf(Float64Array.of(8, 1, 4, 2), [0.5, 0.75])[1]; // 5
 */
export function quantilesOf(values: Float64Array, shares: readonly number[]): Float64Array {
  const last = values.length - 1;
  const ranks = new Uint32Array(2 * shares.length);
  for (let k = 0; k < shares.length; k++) {
    const below = Math.floor(shares[k]! * last);
    ranks[2 * k] = below;
    ranks[2 * k + 1] = Math.min(below + 1, last);
  }
  const ranked = valuesOfRanks(values, ranks);
  const quantiles = new Float64Array(shares.length);
  for (let k = 0; k < shares.length; k++) {
    const part = shares[k]! * last - ranks[2 * k]!;
    const low = ranked[2 * k]!;
    quantiles[k] = low + part * (ranked[2 * k + 1]! - low);
  }
  return quantiles;
}

/** The values of the wanted ranks, 0 the least. */
function valuesOfRanks(values: Float64Array, ranks: Uint32Array): Float64Array {
  const found = new Float64Array(ranks.length);
  const shelves = few < values.length ? shelvesOf(values) : null;
  if (shelves === null) {
    const sorted = Float64Array.from(values).sort();
    for (let k = 0; k < ranks.length; k++) found[k] = sorted[ranks[k]!]!;
    return found;
  }
  const { shelfOf, firstRank } = shelves;
  const filled = new Uint32Array(firstRank.length - 1);
  const wanted = new Uint8Array(firstRank.length - 1);
  const sorted = new Map<number, Float64Array>();
  for (let k = 0; k < ranks.length; k++) {
    const shelf = shelfWith(firstRank, ranks[k]!);
    if (wanted[shelf] === 0) sorted.set(shelf, new Float64Array(firstRank[shelf + 1]! - firstRank[shelf]!));
    wanted[shelf] = 1;
  }
  for (let i = 0; i < values.length; i++) {
    const shelf = shelfOf[i]!;
    if (wanted[shelf] === 0) continue;
    sorted.get(shelf)![filled[shelf]!++] = values[i]!;
  }
  for (const row of sorted.values()) row.sort();
  for (let k = 0; k < ranks.length; k++) {
    const shelf = shelfWith(firstRank, ranks[k]!);
    found[k] = sorted.get(shelf)![ranks[k]! - firstRank[shelf]!]!;
  }
  return found;
}

/** The shelf that holds a rank. */
function shelfWith(firstRank: Uint32Array, rank: number): number {
  let [low, high] = [0, firstRank.length - 2];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (firstRank[middle]! <= rank) low = middle;
    else high = middle - 1;
  }
  return low;
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
  const shelfOf = shelfRow.take(values.length);
  const firstRank = rankRow.take(count + 1).fill(0);
  for (let i = 0; i < values.length; i++) {
    const shelf = Math.min(count - 1, Math.floor((values[i]! - least) * perUnit));
    shelfOf[i] = shelf;
    firstRank[shelf + 1]! += 1;
  }
  for (let shelf = 0; shelf < count; shelf++) firstRank[shelf + 1]! += firstRank[shelf]!;
  return { shelfOf, firstRank };
}
