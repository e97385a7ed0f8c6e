function mixed(h: number, value: number): number {
  let r = Math.imul(h ^ value, 0x85ebca6b);
  r ^= r >>> 13;
  r = Math.imul(r, 0xc2b2ae35);
  return r ^ (r >>> 16);
}

/** Mixes integers into a 32-bit seed (finaliser of a well-known 32-bit hash, memory; the test checks that neighbours differ). */
export function mixSeed(a: number, b = 0, c = 0): number {
  return mixed(mixed(mixed(0x9e3779b9, a | 0), b | 0), c | 0) >>> 0;
}
