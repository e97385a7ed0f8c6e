/** A wind that grows with height by a power law from one reading near the ground. */
export interface PowerLawWind {
  readonly kind: "power";
  /** Where the air goes at the reference height: eastward part [m/s]. */
  readonly east: number;
  /** Northward part [m/s]. */
  readonly north: number;
  /** Height of the reading above the ground [m], > 0. */
  readonly referenceHeight: number;
  /** Exponent of the power law, ≥ 0. */
  readonly exponent: number;
  /** Height above which the wind no longer grows [m]; Infinity: never. */
  readonly gradientHeight: number;
}

/** Winds read at several heights, linear between them by components, constant beyond the ends. */
export interface AloftWind {
  readonly kind: "aloft";
  /** Heights above the pad [m], length n ≥ 1, rising. */
  readonly heights: readonly number[];
  /** Eastward parts [m/s], length n: where the air goes. */
  readonly east: readonly number[];
  /** Northward parts [m/s], length n. */
  readonly north: readonly number[];
}

/** The wind over height above the pad. */
export type WindProfile = PowerLawWind | AloftWind;
