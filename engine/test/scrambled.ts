import { scrambleIn } from "../src/spread/scramble.js";

/** A 32-bit fraction alone, scrambled. */
export function scrambled(x: number, seed: number): number {
  const one = Uint32Array.of(x);
  scrambleIn(one, 0, seed);
  return one[0]!;
}
