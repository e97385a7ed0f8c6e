import type { PackingPart } from "@delaywright/documents";
import { renderToString } from "react-dom/server";
import { expect, test } from "vitest";
import { inventedDocuments } from "../../standing/invented.js";
import { PackingFound } from "./packing-found.js";

const part: PackingPart = {
  topic: "charge",
  title: "Ejection charge and pins",
  stop: null,
  sentences: ["0.33 g of black powder."],
  caveats: ["Leaks are not counted."],
  gaps: [{ words: "The hold is not known.", field: "rocket: bay.friction" }],
};
const shown = (more: Partial<PackingPart> = {}): string =>
  renderToString(<PackingFound part={{ ...part, ...more }} documents={inventedDocuments()} before={<i>mind</i>} />);

test("PackingFound puts the caution first, then what was found, and leads to what is missing", () => {
  const page = shown();
  expect(page).toMatch(
    /<h3[^>]*>Ejection charge.*<i>mind<\/i>.*0\.33 g.*<button.*The hold is not known\..*Enter it.*Leaks/s,
  );
  expect(page).not.toContain("verdict");
  expect(shown({ gaps: [] })).not.toContain("<button");
  expect(shown({ gaps: [{ words: "Nobody says it.", field: "" }] })).not.toContain("<button");
});

test("PackingFound says stop by a word", () => {
  expect(shown({ stop: "The charge does not do." })).toMatch(/verdict stop">stop<\/span> *<b>The charge does not do\./);
});
