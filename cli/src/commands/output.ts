import { decodeText } from "@delaywright/documents";
import { UsageError } from "../args/usage.js";
import type { Io } from "../io/io.js";
import { shown } from "../print/shown.js";

/** What may be written over. */
interface Replaceable {
  /** Whether the text of the file that is there may be replaced; left out: none may. */
  readonly replaces?: (text: string) => boolean;
  /** What is said to be accepted where it may not: `a new name is accepted`. */
  readonly accepted: string;
}

/**
 * Refuses an output that would replace what cannot be had again: a file that is there already, a folder, a device.
 *
 * @throws {UsageError} before anything is computed
 */
export async function keepWhatIsThere(
  output: string | undefined,
  { replaces, accepted }: Replaceable,
  io: Io,
): Promise<void> {
  if (output === undefined) return;
  const there = await io.files.read(output);
  if (there.ok) {
    const decoded = decodeText(there.bytes);
    if (decoded.ok && replaces?.(decoded.text)) return;
  } else if (there.reason === "missing") return;
  else if (there.reason === "not-a-file")
    throw new UsageError(`-o: ${shown(output)} is a folder or a device; the name of a file is accepted`);
  throw new UsageError(`-o: ${shown(output)} is already there, and is not written over; ${accepted}`);
}

/** Writes an output. */
export async function writeOutput(output: string, text: string, io: Io): Promise<void> {
  const failure = await io.write(output, text);
  if (failure !== null) throw new UsageError(`-o: ${shown(output)} cannot be written (${failure})`);
}
