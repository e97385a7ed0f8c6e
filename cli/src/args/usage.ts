/** A value on the command line that is not accepted. */
export class UsageError extends Error {}

/** What several parts have, as one. */
type Whole<Part> = (Part extends unknown ? (part: Part) => void : never) extends (whole: infer All) => void
  ? All
  : never;

/**
 * Reads every part of what was typed and puts them together.
 *
 * @throws {UsageError} with a line for each part that is not accepted: all is told at once
 * @example
 * await together(() => ({ plan }), () => given("draws", "0", drawsOf)); // { plan, draws }
 */
export async function together<const Parts extends readonly object[]>(
  ...reads: { readonly [Key in keyof Parts]: () => Parts[Key] | Promise<Parts[Key]> }
): Promise<Whole<Parts[number]>> {
  const faults: string[] = [];
  const parts: object[] = [];
  for (const read of reads) {
    try {
      parts.push(await read());
    } catch (error) {
      if (!(error instanceof UsageError)) throw error;
      faults.push(error.message);
    }
  }
  if (faults.length > 0) throw new UsageError(faults.join("\n"));
  return Object.assign({}, ...parts) as Whole<Parts[number]>;
}
