const entities: Readonly<Record<string, string>> = Object.freeze({
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
});

/**
 * A text for a page: nothing in it can become markup, and letters that would turn or hide what follows are shown as such.
 *
 * @example
 * escaped("<b>"); // "&lt;b&gt;"
 */
export function escaped(text: string): string {
  return text
    .replace(/[\r\n\t]+/g, " ")
    .replace(/[&<>"']/g, (sign) => entities[sign] ?? sign)
    .replace(/[\p{Cc}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/gu, "\ufffd");
}
