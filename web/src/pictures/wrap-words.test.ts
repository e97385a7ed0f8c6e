import { expect, test } from "vitest";
import { textWidth } from "./place-labels.js";
import { wrapWords } from "./wrap-words.js";

test("wrapWords() keeps every line within its room, and no-break spaces whole", () => {
  const words = "good up to 6\u202fmph, then a check says stop: opened landings outside the field, most 50\u00a0%";
  const lines = wrapWords(words, 180, 13, true);
  expect(lines.join(" ")).toBe(words);
  expect(lines.length).toBeGreaterThan(2);
  for (const line of lines) expect(textWidth(line, 13, true)).toBeLessThanOrEqual(180);
  expect(wrapWords(words, 2000, 13)).toEqual([words]);
  expect(wrapWords("unbreakable words", 1, 13)).toEqual(["unbreakable", "words"]);
});
