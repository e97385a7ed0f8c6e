import { textWidth } from "./place-labels.js";

/**
 * Words in as many lines as they need; a word that is too long for a line of its own is not broken.
 *
 * @param room width of a line [px]
 * @param size font size [px]
 * @example
 * wrapWords("good up to 6 mph, then clean is below 80 %", 120, 13); // ["good up to 6", "mph, then clean", "is below 80 %"]
 */
export function wrapWords(words: string, room: number, size: number, strong = false): readonly string[] {
  const lines: string[] = [];
  // a no-break space is none to break at
  for (const word of words.split(" ")) {
    const last = lines.at(-1);
    const longer = `${last} ${word}`;
    if (last === undefined || textWidth(longer, size, strong) > room) lines.push(word);
    else lines[lines.length - 1] = longer;
  }
  return lines;
}
