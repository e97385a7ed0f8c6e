/** Up to here the subsonic rule holds (Prandtl-Glauert); physics of thin fins. */
export const SUBSONIC_LIMIT = 0.9;
/** From here on the supersonic rule holds (linear theory). */
export const SUPERSONIC_LIMIT = 1.2;

/**
 * A function over Mach number made of a subsonic rule, a supersonic rule and a cubic between them that meets both in value and slope.
 *
 * @param subsonic holds up to `from`
 * @param supersonic holds from `to` on; not asked below it
 * @param from Mach number, default 0.9
 * @param to Mach number, default 1.2
 * @returns the joined function, its first derivative continuous; the bridge is worked out when first asked for
 * @source Hermite's cubic; the bridge itself is no theory
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
  const width = to - from;
  let cubic: readonly [number, number, number, number] | undefined;
  const ends = () => {
    const [y0, y1] = [subsonic(from), supersonic(to)];
    const slope0 = ((y0 - subsonic(from - h)) / h) * width;
    const slope1 = ((supersonic(to + h) - y1) / h) * width;
    return [y0, slope0, 3 * (y1 - y0) - 2 * slope0 - slope1, slope0 + slope1 - 2 * (y1 - y0)] as const;
  };
  return (mach) => {
    if (mach <= from) return subsonic(mach);
    if (mach >= to) return supersonic(mach);
    cubic ??= ends();
    const t = (mach - from) / width;
    return cubic[0] + t * (cubic[1] + t * (cubic[2] + t * cubic[3]));
  };
}
