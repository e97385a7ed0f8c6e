import type { OpeningSpec } from "../src/spread/opening-spec.js";

/** Openings that are judged at these delays as a usual rocket's are; one sigma as the standard's tolerance has it, unless told. */
export function openingOf(
  delays: readonly number[],
  samples: number,
  sdOf: (delay: number) => number = (delay) => Math.max(0.75, 0.1 * delay),
): OpeningSpec {
  return {
    settings: delays.map((delay) => ({ delay, sd: sdOf(delay) })),
    clock: "burnout",
    lineStretch: 0.5,
    speedLimit: 20,
    strengthSpeed: 40,
    floor: 100,
    fillDistance: 8,
    electronicsDelay: null,
    samples,
  };
}
