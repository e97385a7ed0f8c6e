import { shown } from "./shown.js";

/** Width that every line for people keeps. */
export const WIDTH = 100;

/**
 * Breaks a text into lines between words; words that were glued stay together, and end as plain spaces.
 *
 * @param text without line breaks
 * @param indent before every line
 * @param hanging before every line but the first; left out: as `indent`
 * @param width that no line passes
 */
export function wrap(text: string, indent = "", hanging = indent, width = WIDTH): string {
  const lines: string[] = [];
  let line = "";
  const room = (): number => width - (lines.length === 0 ? indent : hanging).length;
  for (const word of shown(text)
    .split(/ +/)
    .flatMap((each) => pieces(each, width - hanging.length))) {
    if (line !== "" && line.length + 1 + word.length > room()) {
      lines.push(line);
      line = word;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  lines.push(line);
  return lines.map((each, i) => `${i === 0 ? indent : hanging}${each}`.replaceAll("\u00a0", " ").trimEnd()).join("\n");
}

/** A word longer than a line, such as a path, in pieces. */
function pieces(word: string, most: number): string[] {
  const out: string[] = [];
  for (let rest = word; rest !== ""; rest = rest.slice(most)) out.push(rest.slice(0, most));
  return out.length === 0 ? [""] : out;
}

/** A list entry: a dash, and the text hanging beside it. */
export function bullet(text: string): string {
  return wrap(text, "  - ", "    ");
}
