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
 * @param cp centre of pressure from the nose tip [m]
 * @param balance balance point from the nose tip [m]
 * @param diameter reference diameter [m], > 0
 * @param length of the rocket [m], > 0
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
  readonly cp: number;
  readonly balance: number;
  readonly diameter: number;
  readonly length: number;
}): StaticMargin {
  return { calibres: (cp - balance) / diameter, ofLength: (cp - balance) / length };
}
