/**
 * A table over evenly spaced places whose rows are worked out when first asked for: cubic between them, with continuous slope.
 *
 * For smooth functions that cost more than a look-up; a function's own kink is rounded off over one spacing.
 *
 * @source cubic through values and central differences of neighbours (Catmull and Rom); its error is of the spacing's third power
 * @example
 * const table = new RowTable({ from: 0, step: 0.1, count: 40, width: 1, fill: (x, out, at) => { out[at] = Math.sin(x); } });
 * table.value(table.locate(1.23), 0); // 0.9425
 */
export class RowTable {
  readonly values: Float64Array;
  /** Weights of the four rows about the place last located. */
  readonly weights = new Float64Array(4);
  readonly width: number;
  readonly count: number;
  readonly #from: number;
  readonly #perStep: number;
  readonly #step: number;
  readonly #fill: RowTableSpec["fill"];
  readonly #filled: Uint8Array;

  constructor({ from, step, count, width, fill }: RowTableSpec) {
    this.values = new Float64Array(count * width);
    this.width = width;
    this.count = count;
    this.#from = from;
    this.#step = step;
    this.#perStep = 1 / step;
    this.#fill = fill;
    this.#filled = new Uint8Array(count);
  }

  /** Finds the rows about a place and their weights; beyond the ends the last cell's cubic goes on. Returns where the rows begin in `values`. */
  locate(x: number): number {
    const place = (x - this.#from) * this.#perStep;
    let cell = Math.floor(place);
    if (!(cell >= 1)) cell = 1;
    else if (cell > this.count - 3) cell = this.count - 3;
    const s = place - cell;
    for (let row = cell - 1; row <= cell + 2; row++) if (this.#filled[row] === 0) this.#make(row);
    const { weights } = this;
    weights[0] = 0.5 * s * (s * (2 - s) - 1);
    weights[1] = 1 + 0.5 * s * s * (3 * s - 5);
    weights[2] = 0.5 * s * (1 + s * (4 - 3 * s));
    weights[3] = 0.5 * s * s * (s - 1);
    return (cell - 1) * this.width;
  }

  /** One column at the place last located. */
  value(offset: number, column: number): number {
    const { values, weights, width } = this;
    const o = offset + column;
    return (
      weights[0]! * values[o]! +
      weights[1]! * values[o + width]! +
      weights[2]! * values[o + 2 * width]! +
      weights[3]! * values[o + 3 * width]!
    );
  }

  /** Works out all rows up to a place. */
  fillTo(x: number): void {
    const last = Math.min(this.count - 1, Math.ceil((x - this.#from) * this.#perStep) + 2);
    for (let row = 0; row <= last; row++) if (this.#filled[row] === 0) this.#make(row);
  }

  #make(row: number): void {
    this.#fill(this.#from + row * this.#step, this.values, row * this.width);
    this.#filled[row] = 1;
  }
}

export interface RowTableSpec {
  readonly from: number;
  readonly step: number;
  /** Rows, ≥ 4. */
  readonly count: number;
  /** Numbers a row. */
  readonly width: number;
  /** Writes the row of a place into `out` from `at`. */
  readonly fill: (x: number, out: Float64Array, at: number) => void;
}
