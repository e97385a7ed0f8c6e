import { mixSeed } from "../math/mix-seed.js";
import { normalQuantile } from "../math/normal.js";

/** Spacing of the series, in scale lengths: 6 cm to 6 m of air, well below the length of one swing. */
export const seriesSpacing = 0.02;

/** Components of a gust by the specification's filters. */
export type DrydenFilter = "longitudinal" | "lateral";

const h = seriesSpacing;
const keptLongitudinal = Math.exp(-h);
const newLongitudinal = Math.sqrt(1 - keptLongitudinal ** 2);

// y'' + 2 y' + y = white: exp(F h) of a double eigenvalue −1, stationary covariance 1/4 of the unit matrix
const decay = Math.exp(-h);
const [a11, a12, a21, a22] = [decay * (1 + h), decay * h, -decay * h, decay * (1 - h)];
const [q11, q12, q22] = [
  0.25 * (1 - a11 * a11 - a12 * a12),
  -0.25 * (a11 * a21 + a12 * a22),
  0.25 * (1 - a21 * a21 - a22 * a22),
];
const l11 = Math.sqrt(q11);
const l21 = q12 / l11;
const l22 = Math.sqrt(q22 - l21 * l21);

/**
 * One gust component of unit variance over the way flown in scale lengths: white noise through the specification's filter.
 *
 * The filters are stepped exactly (matrix exponential and its noise's covariance), so the values at the series' points have the
 * filter's own variance and correlation whatever the spacing. Between the points a cubic with continuous slope, which loses at
 * most 0.8 % of the variance half-way. Depends on seed and place alone: values are made when first asked for, in order.
 *
 * @source MIL-F-8785C (1980), 3.7.1.2: 1/(1 + s) and (1 + √3 s)/(1 + s)², s counted in scale lengths
 */
export class DrydenSeries {
  readonly #seed: number;
  readonly #lateral: boolean;
  #values = new Float64Array(1024);
  #count = 0;
  #state = 0;
  #rate = 0;

  /** @param seed any integer; series of different seeds are independent */
  constructor(seed: number, filter: DrydenFilter) {
    this.#seed = seed;
    this.#lateral = filter === "lateral";
  }

  /** Value at one of the series' points, ≥ 0, whole. */
  point(index: number): number {
    if (index >= this.#count) this.#extendTo(index);
    return this.#values[index]!;
  }

  /** Value at a way flown [scale lengths], at least one spacing from the start. */
  at(way: number): number {
    const place = way / h;
    const cell = Math.floor(place);
    if (cell + 2 >= this.#count) this.#extendTo(cell + 2);
    const s = place - cell;
    const before = this.#values[cell - 1]!;
    const low = this.#values[cell]!;
    const high = this.#values[cell + 1]!;
    const after = this.#values[cell + 2]!;
    const bend = 2 * before - 5 * low + 4 * high - after;
    return low + 0.5 * s * (high - before + s * (bend + s * (3 * (low - high) + after - before)));
  }

  #extendTo(index: number): void {
    if (index >= this.#values.length) {
      const longer = new Float64Array(Math.max(2 * this.#values.length, index + 1));
      longer.set(this.#values);
      this.#values = longer;
    }
    for (let k = this.#count; k <= index; k++) this.#values[k] = this.#next(k);
    this.#count = index + 1;
  }

  #next(k: number): number {
    const first = noise(this.#seed, k, 0);
    if (!this.#lateral) {
      this.#state = k === 0 ? first : keptLongitudinal * this.#state + newLongitudinal * first;
      return this.#state;
    }
    const second = noise(this.#seed, k, 1);
    const [state, rate] = [this.#state, this.#rate];
    this.#state = k === 0 ? 0.5 * first : a11 * state + a12 * rate + l11 * first;
    this.#rate = k === 0 ? 0.5 * second : a21 * state + a22 * rate + l21 * first + l22 * second;
    return this.#state + Math.sqrt(3) * this.#rate;
  }
}

/** Standard normal number of a seed, a place and a stream. */
function noise(seed: number, place: number, stream: number): number {
  return normalQuantile((mixSeed(seed, place, stream) + 0.5) / 4294967296);
}
