/** Mean width of a letter of the card's own words in the faces of its style sheet [em]: measured, some to spare. */
const LETTER = 0.45;
/** What the end of a line leaves empty, in the mean half a word [em]. */
const RAGGED = 1;

/**
 * How many lines a text takes, as a rule no more.
 *
 * @param text without markup
 * @param width of its column [em of its own letters]
 * @example
 * linesOf("x".repeat(100), 24); // 2
 */
export function linesOf(text: string, width: number): number {
  const long = text.length * LETTER;
  return long <= width ? Math.sign(text.length) : Math.ceil(long / (width - RAGGED));
}
