import { type CodePath, codePath as drawnCode } from "@delaywright/documents";

/** Largest version whose dots a label printer draws apart on `SIDE` [mm] of label. */
const LARGEST = 13;

/** Most that a label's code holds [bytes of UTF-8]: a code of version 13, of which 15 % may be lost. */
export const MOST_BYTES = 331;

export type { CodePath };

/** The size of a text in a code [bytes]. */
export function bytesOf(text: string): number {
  return new TextEncoder().encode(text).length;
}

/**
 * A text as a code to be read by a camera.
 *
 * @returns null where the text is too long
 * @example
 * codePath("Bag 3")?.size; // 29
 */
export function codePath(text: string): CodePath | null {
  const bytes = [...new TextEncoder().encode(text)];
  return bytes.length > MOST_BYTES ? null : drawnCode(bytes, LARGEST);
}
