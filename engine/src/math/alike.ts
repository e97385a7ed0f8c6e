/**
 * Do two values of plain data hold the same: numbers, texts, lists and keyed values, however deep?
 *
 * Minus zero is not zero, and what is left out is not what is undefined, so that nothing can be told from the values but by
 * whose they are.
 *
 * @example
 * alike({ times: [0, 1] }, { times: [0, 1] }); // true
 */
export function alike(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (Object.getPrototypeOf(a) !== Object.getPrototypeOf(b)) return false;
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  for (const key of keys)
    if (!Object.hasOwn(b, key) || !alike(a[key as keyof typeof a], b[key as keyof typeof b])) return false;
  return true;
}
