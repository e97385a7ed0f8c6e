import { normalQuantile } from "./normal.js";

/**
 * Interval for a share, from how often something happened: Wilson's.
 *
 * @param successes 0 … `tries`
 * @param tries ≥ 0
 * @param confidence 0…1
 * @returns 0 and 1 where nothing was tried
 * @source E. B. Wilson, J. Amer. Stat. Assoc. 22 (1927); memory
 * @example
 * wilsonInterval(8, 10); // [0.4901…, 0.9433…]
 */
export function wilsonInterval(successes: number, tries: number, confidence = 0.95): readonly [number, number] {
  if (!(tries > 0)) return [0, 1];
  const z = normalQuantile(0.5 + 0.5 * confidence);
  const share = successes / tries;
  const middle = share + (z * z) / (2 * tries);
  const half = z * Math.sqrt((share * (1 - share)) / tries + (z * z) / (4 * tries * tries));
  const whole = 1 + (z * z) / tries;
  return [
    successes === 0 ? 0 : Math.max(0, (middle - half) / whole),
    successes === tries ? 1 : Math.min(1, (middle + half) / whole),
  ];
}

/**
 * Highest share that never happening in `tries` still allows, with 95 % confidence.
 *
 * @param tries ≥ 1
 * @returns the rule of three, 3/n, and what it stands for, 1 − 0.05^(1/n)
 * @source closed form; the rule is common practice
 * @example
 * neverHappened(100); // { ruleOfThree: 0.03, exact: 0.029513… }
 */
export function neverHappened(tries: number): { readonly ruleOfThree: number; readonly exact: number } {
  return { ruleOfThree: 3 / tries, exact: 1 - 0.05 ** (1 / tries) };
}
