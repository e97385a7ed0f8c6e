import type { Fault } from "../issue.js";
import { decodeUtf16, textBytes } from "./log-text.js";

/** Largest log that is read [bytes]. */
export const LARGEST_LOG = 256_000_000;

/** Control signs above this share of what was looked at mean that a file is no text. */
const MOST_CONTROL = 0.1;

export type LogBytes =
  | { readonly ok: true; readonly bytes: Uint8Array; readonly start: number; readonly end: number }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * A log's bytes as one byte a plain letter: marks of encodings taken off, UTF-16 turned into UTF-8, the filling at its end left out.
 *
 * Other eight-bit encodings pass as they are: figures are the same in all of them.
 *
 * @param given the whole file, or its text
 */
export function logBytes(given: Uint8Array | string): LogBytes {
  if (given.length > LARGEST_LOG)
    return refuse("file-too-large", `${given.length} bytes`, `at most ${LARGEST_LOG} bytes`);
  const bytes = typeof given === "string" ? textBytes(given) : decodeUtf16(given);
  const start = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
  const end = withoutFilling(bytes, start);
  if (controlShare(bytes, start, end) > MOST_CONTROL)
    return refuse("not-text", "bytes that are not text", "a text file of figures, as CSV");
  if (isBlank(bytes, start, end)) return refuse("empty-file", "an empty file", "lines of figures");
  return { ok: true, bytes, start, end };
}

/** Instruments that lose their power leave zeros or ones behind the last row. */
function withoutFilling(bytes: Uint8Array, start: number): number {
  let end = bytes.length;
  while (end > start && (bytes[end - 1] === 0 || bytes[end - 1] === 0xff || bytes[end - 1] === 0x1a)) end--;
  return end;
}

function isBlank(bytes: Uint8Array, start: number, end: number): boolean {
  for (let i = start; i < end; i++) if (bytes[i]! > 32) return false;
  return true;
}

/** Looks at the head and at pieces all over the file. */
function controlShare(bytes: Uint8Array, start: number, end: number): number {
  const piece = 4096;
  const length = end - start;
  const pieces = Math.min(64, Math.ceil(length / piece));
  let control = 0;
  let seen = 0;
  for (let k = 0; k < pieces; k++) {
    const from = start + Math.floor((k * length) / pieces);
    const to = Math.min(end, from + piece);
    for (let i = from; i < to; i++) {
      const byte = bytes[i]!;
      if (byte < 32 && (byte < 9 || byte > 13)) control++;
    }
    seen += to - from;
  }
  return seen === 0 ? 0 : control / seen;
}

function refuse(code: string, found: string, accepted: string): LogBytes {
  return { ok: false, faults: [{ path: "", code, found, accepted, example: "" }] };
}
