/**
 * Where the air goes, from how fast it blows and where it comes from.
 *
 * @param speed [m/s], ≥ 0
 * @param from azimuth that it blows from [rad], clockwise from north
 * @returns eastward and northward parts [m/s]
 * @example
 * windVelocity(5, Math.PI / 2); // [-5, 0]: an east wind goes west
 */
export function windVelocity(speed: number, from: number): [east: number, north: number] {
  return [-speed * Math.sin(from), -speed * Math.cos(from)];
}
