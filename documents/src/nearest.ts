/**
 * The known name that was probably meant.
 *
 * @param name what was written
 * @param known the names there are
 * @returns the nearest one, or undefined where none is near
 * @example
 * nearestName("balanceWithoutMotr", ["balanceWithoutMotor", "length"]); // "balanceWithoutMotor"
 */
export function nearestName(name: string, known: readonly string[]): string | undefined {
  const wanted = name.toLowerCase().slice(0, 60);
  let best: string | undefined;
  let least = Math.max(2, Math.floor(wanted.length / 3)) + 1;
  for (const each of known) {
    const distance = editDistance(wanted, each.toLowerCase());
    if (distance < least) [best, least] = [each, distance];
  }
  if (best !== undefined) return best;
  if (wanted.length < 4) return known.find((each) => wanted.length > 1 && each.toLowerCase().endsWith(wanted));
  return known.find((each) => each.toLowerCase().startsWith(wanted) || wanted.startsWith(each.toLowerCase()));
}

/** Letters to insert, drop or change. */
function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
