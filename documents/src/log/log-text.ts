interface Decoder {
  decode(bytes?: Uint8Array, options?: { stream: boolean }): string;
}
interface Encoder {
  encode(text: string): Uint8Array;
  encodeInto(text: string, bytes: Uint8Array): { readonly written: number };
}
/** Part of every browser and of Node; named here since this package is typed for neither. */
const { TextDecoder, TextEncoder } = globalThis as unknown as {
  readonly TextDecoder: new (label: string, options?: { fatal: boolean }) => Decoder;
  readonly TextEncoder: new () => Encoder;
};

const strict = new TextDecoder("utf-8", { fatal: true });
const western = new TextDecoder("windows-1252");

/** A text as UTF-8. */
export function textBytes(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

/** UTF-16, by its mark or by the zeros in every other byte of its head, as UTF-8; all else as it is. */
export function decodeUtf16(bytes: Uint8Array): Uint8Array {
  const label = utf16Label(bytes);
  if (label === null) return bytes;
  const decoder = new TextDecoder(label);
  const encoder = new TextEncoder();
  const decoded = new Uint8Array(Math.ceil(bytes.length * 1.5) + 3);
  let length = 0;
  const piece = 1 << 20;
  for (let from = 0; from < bytes.length; from += piece) {
    const text = decoder.decode(bytes.subarray(from, from + piece), { stream: from + piece < bytes.length });
    length += encoder.encodeInto(text, decoded.subarray(length)).written;
  }
  return decoded.subarray(0, length);
}

function utf16Label(bytes: Uint8Array): "utf-16le" | "utf-16be" | null {
  const [a, b] = bytes;
  if (a === 0xff && b === 0xfe) return "utf-16le";
  if (a === 0xfe && b === 0xff) return "utf-16be";
  const head = bytes.subarray(0, 256);
  const zeros = [0, 0];
  for (let i = 0; i < head.length; i++) if (head[i] === 0) zeros[i % 2]!++;
  const [even, odd] = zeros as [number, number];
  const most = 0.4 * head.length;
  if (odd > most && even === 0) return "utf-16le";
  return even > most && odd === 0 ? "utf-16be" : null;
}

/** What stands between two places of a log: as UTF-8, or as Windows-1252 where it is none. */
export function textAt(bytes: Uint8Array, from: number, to: number): string {
  const piece = bytes.subarray(from, to);
  try {
    return strict.decode(piece);
  } catch {
    return western.decode(piece);
  }
}
