export { mixSeed } from "../math/mix-seed.js";

function reverseBits(x: number): number {
  let r = x;
  r = ((r >>> 1) & 0x55555555) | ((r & 0x55555555) << 1);
  r = ((r >>> 2) & 0x33333333) | ((r & 0x33333333) << 2);
  r = ((r >>> 4) & 0x0f0f0f0f) | ((r & 0x0f0f0f0f) << 4);
  r = ((r >>> 8) & 0x00ff00ff) | ((r & 0x00ff00ff) << 8);
  return ((r >>> 16) | (r << 16)) >>> 0;
}

/**
 * Nested uniform scramble of a 32-bit fraction: every bit is flipped or not depending on the seed and all higher bits.
 *
 * Keeps the balance of Sobol' points (each dyadic box keeps its share) and makes each point uniform, so that means over
 * differently seeded scrambles are unbiased and independent.
 *
 * @param row where the fraction stands, and then the scrambled one: as the result of a function it may be an object
 * @param at its place there
 * @param seed 32-bit integer
 * @source A. B. Owen, Randomly permuted (t,m,s)-nets (1995); hashed as in B. Burley, Practical Hash-based Owen Scrambling,
 *   JCGT 9 (2020), constants memory; the test checks the properties, not the constants
 */
export function scrambleIn(row: Uint32Array, at: number, seed: number): void {
  let r = reverseBits(row[at]!);
  r = (r + seed) | 0;
  r ^= Math.imul(r, 0x6c50b47c);
  r ^= Math.imul(r, 0xb82f1e52);
  r ^= Math.imul(r, 0xc7afe638);
  r ^= Math.imul(r, 0x8d22f6e6);
  row[at] = reverseBits(r >>> 0);
}
