import type { Odds, Setting } from "../src/decision/decision.js";

/** A setting with odds made up for a test: what is not stated is zero, `clean` takes the rest. */
export function settingWith(
  delay: number,
  odds: Partial<Odds>,
  change: Partial<Omit<Setting, "odds" | "delay">> = {},
): Setting {
  const { earlyFast = 0, lateFast = 0, leanFast = 0, low = 0, grounded = 0 } = odds;
  const clean = 1 - earlyFast - lateFast - leanFast - low - grounded;
  return {
    delay,
    removed: 14 - delay,
    end: null,
    spacers: [],
    depth: null,
    delaySd: 1,
    openingSpeed: null,
    openingHeight: null,
    secondsFromApogee: null,
    firesFirst: null,
    ...change,
    odds: { clean, earlyFast, lateFast, leanFast, low, grounded, holds: 1, error: 0.01, holdsError: 0.001, ...odds },
  };
}
