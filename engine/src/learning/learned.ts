/** What the motor type's flights teach of its delay: a normal-inverse-gamma posterior, as the Student-t that results. */
export interface LearnedDelay {
  /** Mean of [offset [s], rate − 1, the lot's own share (in its prior sigmas)]. */
  readonly mean: readonly [number, number, number];
  /** Scale matrix of the three, and the scatter of a single motor included separately. Row-major 3 × 3. */
  readonly scale: readonly number[];
  /** Factor on the variance of a single motor's scatter. */
  readonly motorScale: number;
  /** Degrees of freedom, > 2. */
  readonly degrees: number;
  /** The prior that was updated: the greater of `seconds` and `fraction` of the delay, one sigma. */
  readonly prior: { readonly seconds: number; readonly fraction: number };
  /** Delays seen, and bounds. */
  readonly seen: number;
  readonly bounds: number;
}

/** What past flights teach of this rocket on this motor type: what `decide` reckons with instead of the priors. */
export interface Learned {
  /** Natural logarithms of the factors on the rocket's drag and on the motor type's impulse; one sigma each, and their correlation. */
  readonly drag: { readonly mean: number; readonly sd: number };
  /** `sd` holds a single motor's scatter too. */
  readonly impulse: { readonly mean: number; readonly sd: number };
  /** −1…1 */
  readonly correlation: number;
  /** Left out: no delay of this type was seen. */
  readonly delay?: LearnedDelay;
  /** Flights of this rocket, of this motor type, and of both that were learned from. */
  readonly flights: { readonly rocket: number; readonly motor: number; readonly both: number };
}

/** One past flight as learning takes it. Rockets and types are told apart by keys of the caller's. */
export interface TaughtFlight {
  readonly rocket: string;
  readonly motor: string;
  /** Null where not known. */
  readonly lot: string | null;
  /** Null where the climb could not be fitted. Factors on the documents' own drag and impulse, not on what was learned by then. */
  readonly climb: {
    readonly lnDrag: number;
    readonly lnImpulse: number;
    readonly covariance: readonly [readonly [number, number], readonly [number, number]];
  } | null;
  /** Delay as set [s], and as flown; null where not known. */
  readonly set: number | null;
  /** One sigma by which the set delay is not known: depth of the cut, burning rate of that day [s]; left out: 0. */
  readonly setError?: number;
  readonly flown: import("../debrief/climb-fit.js").FlownDelay;
}
