/** Up to here the subsonic rule holds (Prandtl-Glauert); physics of thin fins. */
export const SUBSONIC_LIMIT = 0.9;
/** From here on the supersonic rule holds (linear theory). */
export const SUPERSONIC_LIMIT = 1.2;

/**
 * A cubic between two ends that never turns back: Hermite's, with the end slopes held to what keeps it monotone.
 *
 * @param x0 left end
 * @param y0 value there
 * @param slope0 wanted slope there
 * @param x1 right end, > `x0`
 * @param y1 value there
 * @param slope1 wanted slope there
 * @returns the cubic, for x0…x1
 * @source F. N. Fritsch, R. E. Carlson, SIAM J. Numer. Anal. 17 (1980): sufficient bound of three times the secant; memory
 * @example
 * monotoneBridge(0, 0, 0, 1, 1, 0)(0.5); // 0.5
 */
export function monotoneBridge(
  x0: number,
  y0: number,
  slope0: number,
  x1: number,
  y1: number,
  slope1: number,
): (x: number) => number {
  const width = x1 - x0;
  const rise = y1 - y0;
  const held = (slope: number) => {
    const wanted = slope * width;
    return rise >= 0 ? Math.min(Math.max(wanted, 0), 3 * rise) : Math.max(Math.min(wanted, 0), 3 * rise);
  };
  const d0 = held(slope0);
  const d1 = held(slope1);
  return (x) => {
    const t = (x - x0) / width;
    return y0 + t * (d0 + t * (3 * rise - 2 * d0 - d1 + t * (d0 + d1 - 2 * rise)));
  };
}

/**
 * A function over Mach number made of a subsonic rule, a supersonic rule and a monotone bridge between them.
 *
 * @param subsonic holds up to `from`
 * @param supersonic holds from `to` on
 * @param from Mach number, default 0.9
 * @param to Mach number, default 1.2
 * @returns the joined function, continuous
 * @example
 * bridgeOverMach(() => 1, () => 3)(1.05); // 2
 */
export function bridgeOverMach(
  subsonic: (mach: number) => number,
  supersonic: (mach: number) => number,
  from: number = SUBSONIC_LIMIT,
  to: number = SUPERSONIC_LIMIT,
): (mach: number) => number {
  const h = 1e-5;
  const slope0 = (subsonic(from) - subsonic(from - h)) / h;
  const slope1 = (supersonic(to + h) - supersonic(to)) / h;
  const bridge = monotoneBridge(from, subsonic(from), slope0, to, supersonic(to), slope1);
  return (mach) => (mach <= from ? subsonic(mach) : mach >= to ? supersonic(mach) : bridge(mach));
}
