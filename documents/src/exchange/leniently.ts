interface Decoder {
  decode(bytes: Uint8Array): string;
}
/** Part of every browser and of Node; named here since this package is typed for neither. */
const { TextDecoder } = globalThis as unknown as { readonly TextDecoder: new (label: string) => Decoder };

/**
 * The text of a file that is not UTF-8, so that it can be looked at and kept: by its byte-order mark, else as Windows-1252,
 * which takes any byte.
 *
 * @returns undefined where it is no text at all
 */
export function leniently(bytes: Uint8Array): string | undefined {
  const [a, b] = bytes;
  if (a === 0xff && b === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (a === 0xfe && b === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  if (bytes.length === 0 || bytes.includes(0)) return undefined;
  return new TextDecoder("windows-1252").decode(bytes);
}
