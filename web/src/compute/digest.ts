import type { SourceDocument } from "./desk-copy.js";

const known = new WeakMap<SourceDocument, string>();

/** Two runs of a multiplying hash over the characters: 64 bits, against chance and not against malice. */
function hash(text: string): string {
  let a = 0x811c9dc5;
  let b = 0x1b873593;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    a = Math.imul(a ^ code, 0x01000193);
    b = Math.imul(b ^ code, 0x85ebca6b) + i;
  }
  return `${(a >>> 0).toString(36)}-${(b >>> 0).toString(36)}-${text.length.toString(36)}`;
}

/** A short text that changes with anything in a document that an answer can depend on. */
export function digestOf(document: SourceDocument): string {
  const found = known.get(document) ?? hash(JSON.stringify([document.raw, document.text, document.drafts]));
  known.set(document, found);
  return found;
}
