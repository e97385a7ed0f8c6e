interface Coders {
  btoa(binary: string): string;
  atob(text: string): string;
}
/** Part of every browser and of Node; named here since this package is typed for neither. */
const { btoa, atob } = globalThis as unknown as Coders;

/** Bytes that are turned at once: a multiple of three, so that parts join without padding. */
const STRETCH = 24_576;

/** Bytes as a text of letters and digits, to stand in JSON. */
export function toBase64(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += STRETCH)
    text += btoa(String.fromCharCode(...bytes.subarray(at, at + STRETCH)));
  return text;
}

/** The bytes of such a text; undefined where it is none. */
export function fromBase64(text: string): Uint8Array | undefined {
  try {
    const binary = atob(text);
    const bytes = new Uint8Array(binary.length);
    for (let i = 0; i < binary.length; i += 1) bytes[i] = binary.charCodeAt(i);
    return bytes;
  } catch {
    return undefined;
  }
}
