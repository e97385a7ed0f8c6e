/**
 * Speed of a 1-cosine gust along the way into it: zero before, the full gust beyond its length.
 *
 * @param gust speed of the full gust [m/s], length over which it builds up [m], > 0, and distance gone into it [m]
 * @returns [m/s]
 * @source MIL-F-8785C (1980), 3.7.2; form from memory
 * @example
 * oneCosineGust({ speed: 3, length: 40, distance: 20 }); // 1.5
 */
export function oneCosineGust(gust: { speed: number; length: number; distance: number }): number {
  const part = Math.min(Math.max(gust.distance / gust.length, 0), 1);
  return (gust.speed / 2) * (1 - Math.cos(Math.PI * part));
}
