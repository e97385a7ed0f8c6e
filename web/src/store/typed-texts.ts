/** Texts that are being typed and belong to no field of a document yet: they survive a page that is killed. */

const PREFIX = "delaywright-typed:";

/**
 * @param path of the document that it will belong to
 * @param what it is
 */
function keyOf(path: string, what: string): string {
  return `${PREFIX}${path} ${what}`;
}

/** A text as it was typed last; empty: none. */
export function typedText(path: string, what: string): string {
  try {
    return localStorage.getItem(keyOf(path, what)) ?? "";
  } catch {
    return "";
  }
}

export function keepTypedText(path: string, what: string, text: string): void {
  try {
    if (text === "") localStorage.removeItem(keyOf(path, what));
    else localStorage.setItem(keyOf(path, what), text);
  } catch {
    // it then lasts only as long as the page
  }
}

/** They go with their document: another one may come under its path. */
export function forgetTypedTexts(path: string): void {
  try {
    const mine = Object.keys(localStorage).filter((key) => key.startsWith(keyOf(path, "")));
    for (const key of mine) localStorage.removeItem(key);
  } catch {
    // none were kept
  }
}
