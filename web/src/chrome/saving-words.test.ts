import { expect, test } from "vitest";
import { savingOf, savingWords } from "./saving-words.js";

test("savingOf() and savingWords() follow an import until all of it is kept", () => {
  let of = 0;
  const said = [500, 500, 300, 320, 20, 0, 40].map((unsaved) => {
    of = savingOf(of, unsaved);
    return savingWords(unsaved, of);
  });
  expect(said).toEqual([
    "saving 0 of 500 documents…",
    "saving 0 of 500 documents…",
    "saving 200 of 500 documents…",
    "saving 180 of 500 documents…",
    "saving 480 of 500 documents…",
    "",
    "saving 0 of 40 documents…",
  ]);
});

test("savingWords() says nothing of what is typed", () => {
  expect(savingWords(1, savingOf(0, 1))).toBe("");
});
