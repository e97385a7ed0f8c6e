import { InputError } from "../issues.js";

const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

/** Every class, rising, with its upper limit [N s]: each takes twice the impulse of the one before. */
const CLASSES: readonly { readonly name: string; readonly upTo: number }[] = [
  { name: "1/8A", upTo: 0.3125 },
  { name: "1/4A", upTo: 0.625 },
  { name: "1/2A", upTo: 1.25 },
  ...[...LETTERS].map((name, i) => ({ name, upTo: 1.25 * 2 ** (i + 1) })),
];

/**
 * Class of a motor by its total impulse: each class is open below and closed above.
 *
 * Classes are in use up to O; the doubling goes on to Z, and beyond it the answer is `>Z`.
 *
 * @param totalImpulse [N s], > 0
 * @returns `1/8A`, `1/4A`, `1/2A`, `A` … `Z`, or `>Z`
 * @throws {InputError} `impulse-not-positive`
 * @source NFPA 1125 (2012/2017); the limits below 1/2A from memory
 * @example
 * motorClass(320); // "H"
 */
export function motorClass(totalImpulse: number): string {
  if (!(totalImpulse > 0)) {
    throw new InputError([
      { code: "impulse-not-positive", path: "totalImpulse", found: totalImpulse, accepted: "> 0 N s" },
    ]);
  }
  return CLASSES.find(({ upTo }) => totalImpulse <= upTo)?.name ?? ">Z";
}

/**
 * Limits of a motor class.
 *
 * @param name `1/8A`, `1/4A`, `1/2A`, `A` … `Z`
 * @returns impulse above which [N s] and up to which [N s] the class goes; null for a name that is no class
 * @source NFPA 1125 (2012/2017)
 * @example
 * classLimits("H"); // { above: 160, upTo: 320 }
 */
export function classLimits(name: string): { above: number; upTo: number } | null {
  const i = CLASSES.findIndex((entry) => entry.name === name);
  if (i === -1) return null;
  return { above: i === 0 ? 0 : CLASSES[i - 1]!.upTo, upTo: CLASSES[i]!.upTo };
}
