/** Drag and impulse of one flight, as its climb tells them: factors on what the plan reckons with. */
export interface ClimbFit {
  /** Natural logarithms of the factors on drag and on total impulse. */
  readonly lnDrag: number;
  readonly lnImpulse: number;
  /** Of the two, without any prior: [[drag, both], [both, impulse]]. Infinite variances where the climb does not tell. */
  readonly covariance: readonly [readonly [number, number], readonly [number, number]];
  /** Root mean square of what is left of the heights [m]. */
  readonly residual: number;
  /** Stretch of the climb that was used, on the record's clock [s]. */
  readonly from: number;
  readonly to: number;
  readonly converged: boolean;
}

/** A delay as flown. A bound where the charge could not be seen to fire. */
export type FlownDelay =
  | { readonly kind: "seen"; readonly delay: number; readonly error: number }
  | { readonly kind: "at-least"; readonly delay: number }
  | { readonly kind: "at-most"; readonly delay: number }
  | { readonly kind: "unknown" };
