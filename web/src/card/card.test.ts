import { cardPapers } from "@delaywright/documents";
import { describe, expect, test } from "vitest";
import { keptWords } from "./card-code-text.js";
import { cardFileName, papers } from "./paper.js";

describe("a card's paper", () => {
  test("is as wide on screen as on paper: 96 px to the inch", () => {
    expect(papers.map(({ id }) => id)).toEqual([...cardPapers]);
    // A5 is 148 mm and A4 210 mm wide by ISO 216, Letter 8.5 in
    expect(papers.map(({ width }) => Math.round(width))).toEqual([559, 794, 816]);
  });

  test("names its file after the plan's", () => {
    expect(cardFileName("demo-third-flight.plan.json")).toBe("demo-third-flight.card.html");
    expect(cardFileName("other.json")).toBe("other.card.html");
  });
});

test("keptWords() says what was left out of a code", () => {
  expect(keptWords({ text: "", thinned: null, notesLeftOut: false })).toBe("");
  expect(keptWords({ text: "", thinned: { from: 40, to: 18 }, notesLeftOut: true })).toBe(
    "Notes were left out so that it fits. The thrust curve is thinned from 40 to 18 points: impulse, burn time and average as given.",
  );
});
