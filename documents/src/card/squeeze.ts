import { utf8 } from "../file-source.js";

/** The parts of the browser's and Node's streams that are used; named here since this package is typed for neither. */
interface Transform {
  readonly writable: { getWriter(): { write(bytes: Uint8Array): Promise<void>; close(): Promise<void> } };
  readonly readable: {
    getReader(): {
      read(): Promise<{ readonly done: boolean; readonly value?: Uint8Array }>;
      cancel(): Promise<void>;
    };
  };
}
type TransformMaker = new (format: "deflate") => Transform;
interface Decoder {
  decode(bytes: Uint8Array): string;
}
const { CompressionStream, DecompressionStream, TextDecoder } = globalThis as unknown as {
  readonly CompressionStream: TransformMaker;
  readonly DecompressionStream: TransformMaker;
  readonly TextDecoder: new (label: string, options: { fatal: boolean }) => Decoder;
};

/** Bytes sent through a stream; undefined where more than `most` come out. */
async function through(stream: Transform, bytes: Uint8Array, most: number): Promise<Uint8Array | undefined> {
  const writer = stream.writable.getWriter();
  // what fails here fails at the reader too, and is told there
  writer.write(bytes).catch(() => {});
  writer.close().catch(() => {});
  const reader = stream.readable.getReader();
  const chunks: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done || value === undefined) break;
    length += value.length;
    if (length > most) {
      reader.cancel().catch(() => {});
      return undefined;
    }
    chunks.push(value);
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

/**
 * A text as few bytes: UTF-8 in the zlib format, whose check sum tells a damaged one.
 *
 * @source RFC 1950 and RFC 1951
 */
export async function squeeze(text: string): Promise<Uint8Array> {
  const bytes = await through(new CompressionStream("deflate"), utf8(text), Number.POSITIVE_INFINITY);
  return bytes ?? new Uint8Array();
}

/**
 * The text that `squeeze` was given.
 *
 * @param bytes from anywhere
 * @param most largest text that is unpacked [bytes]; what would become larger is given up on the way
 * @returns the text, or why there is none
 */
export async function unsqueeze(bytes: Uint8Array, most: number): Promise<string | "too-large" | undefined> {
  try {
    const whole = await through(new DecompressionStream("deflate"), bytes, most);
    return whole === undefined ? "too-large" : new TextDecoder("utf-8", { fatal: true }).decode(whole);
  } catch {
    return undefined;
  }
}
