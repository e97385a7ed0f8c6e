import type { ShortlistData } from "@delaywright/documents";
import { expect, test } from "vitest";
import { standingWords } from "./standing-words.js";

const data = (more: Partial<ShortlistData> = {}): ShortlistData =>
  ({
    context: { rocket: "Demo rocket 76" },
    aim: { by: "best-odds", height: null },
    ranked: [],
    refused: [],
    unjudged: [],
    draws: 500,
    ...more,
  }) as unknown as ShortlistData;

test.each([
  [{ state: "waiting", data: null, of: 0, done: 0 }, /^Looking through/],
  [{ state: "waiting", data: data(), of: 48, done: 12 }, /12 of 48 motors, 0 are not refused so far/],
  [{ state: "waiting", data: data({ ranked: [{}] as never }), of: 48, done: 12 }, /1 is not refused so far/],
  [{ state: "ready", data: data(), of: 0, done: 0 }, /no motor type on this bench/],
  [{ state: "ready", data: data({ unjudged: [{}] as never }), of: 0, done: 0 }, /^None of 1 motors is left/],
  [{ state: "wrong", data: null, of: 0, done: 0 }, /^The plan has to be right first/],
] as const)("standingWords() of %j", (standing, words) => {
  expect(standingWords(standing, "metric")).toMatch(words);
});
