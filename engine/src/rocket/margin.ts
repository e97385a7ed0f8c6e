/** How far the centre of pressure lies behind the balance point. */
export interface StaticMargin {
  /** In diameters; negative where it lies before. */
  readonly calibres: number;
  /** As a fraction of the rocket's length. */
  readonly ofLength: number;
}

/**
 * Static margin.
 *
 * @returns calibres and fraction of length
 * @source definition
 * @example
 * staticMargin({ cp: 1.2, balance: 1.0, diameter: 0.1, length: 2 }); // { calibres: 2, ofLength: 0.1 }
 */
export function staticMargin({
  cp,
  balance,
  diameter,
  length,
}: {
  /** Centre of pressure from the nose tip [m]. */
  readonly cp: number;
  /** Balance point from the nose tip [m]. */
  readonly balance: number;
  /** Reference diameter [m], > 0. */
  readonly diameter: number;
  /** Of the rocket [m], > 0. */
  readonly length: number;
}): StaticMargin {
  return { calibres: (cp - balance) / diameter, ofLength: (cp - balance) / length };
}
