/** A row of numbers of a fixed kind. */
type Row = Float64Array | Uint16Array | Uint32Array;

/**
 * Memory of a thread that is used again: a browser that is asked for rows anew with each flight tidies its memory all the time, and
 * throws away compiled code as it does.
 *
 * What stands in a row belongs to whoever wrote it last, and only for the length of a call: nothing of it may be handed on.
 *
 * @param make gives a row of so many numbers
 * @example
 * const columns = new Scratch((count) => new Float64Array(count));
 * columns.take(3).length; // 3, holding whatever was left there
 */
export class Scratch<Kind extends Row> {
  readonly #make: (count: number) => Kind;
  #row: Kind;

  constructor(make: (count: number) => Kind) {
    this.#make = make;
    this.#row = make(0);
  }

  /** A row of so many numbers, with whatever was left in it. */
  take(count: number): Kind {
    if (this.#row.length < count) this.#row = this.#make(count);
    return (this.#row.length === count ? this.#row : this.#row.subarray(0, count)) as Kind;
  }
}

/** Scratch of doubles. */
export const doublesScratch = (): Scratch<Float64Array> => new Scratch((count) => new Float64Array(count));
