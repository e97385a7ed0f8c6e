import type { Fault } from "./issue.js";

/** Largest file that is read [bytes]. */
export const LARGEST_FILE = 5_000_000;

export type Decoded = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly fault: Fault };

interface Decoder {
  decode(bytes: Uint8Array): string;
}
interface DecoderMaker {
  new (label: string, options: { fatal: boolean; ignoreBOM?: boolean }): Decoder;
}
/** Part of every browser and of Node; named here since this package is typed for neither. */
const { TextDecoder } = globalThis as unknown as { readonly TextDecoder: DecoderMaker };

/**
 * Turns a file's bytes into text: UTF-8, with or without a byte-order mark.
 *
 * Other encodings are named and refused, since a guess could change a name or a unit.
 *
 * @param bytes the whole file
 * @returns the text without its mark, or what is wrong
 * @example
 * decodeText(new Uint8Array([123, 125])); // { ok: true, text: "{}" }
 */
export function decodeText(bytes: Uint8Array): Decoded {
  if (bytes.length > LARGEST_FILE) return refuse("too-large", `${bytes.length} bytes`, `at most ${LARGEST_FILE} bytes`);
  const foreign = foreignEncoding(bytes);
  if (foreign !== undefined) return refuse("encoding", foreign, "a file saved as UTF-8");
  try {
    const text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return text.trim() === "" ? refuse("empty-file", "an empty file", "a JSON document") : { ok: true, text };
  } catch {
    return refuse("encoding", "bytes that are not UTF-8 (Latin-1 or Windows-1252, perhaps)", "a file saved as UTF-8");
  }
}

/** UTF-16 and UTF-32 by their marks, and UTF-16 without one by its zero bytes. */
function foreignEncoding(bytes: Uint8Array): string | undefined {
  const [a, b] = bytes;
  if ((a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff)) return "UTF-16 text";
  const head = bytes.subarray(0, 400);
  const zeros = head.reduce((count, byte) => count + (byte === 0 ? 1 : 0), 0);
  if (zeros > head.length / 4) return "UTF-16 text";
  return zeros > 0 ? "bytes that are not text" : undefined;
}

function refuse(code: string, found: string, accepted: string): Decoded {
  return { ok: false, fault: { path: "", code, found, accepted, example: "" } };
}
