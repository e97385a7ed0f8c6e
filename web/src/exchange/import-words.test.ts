import { describe, expect, test } from "vitest";
import type { ImportReport, TakenIn } from "../store/index.js";
import { exportNames } from "./export-bench.js";
import { importSentence } from "./import-words.js";

const one: TakenIn = { path: "a.rocket.json", name: "A", kind: "rocket", wanted: "a.rocket.json" };
const nothing: ImportReport = { added: [], same: [], curves: [], issues: [] };
const issue = { file: "b.json", path: "", code: "json-syntax", found: "x", accepted: "JSON", example: "" };
const broken = { ...issue, file: "a.json", path: "line 12", code: "back-up-broken" };
const curve = { name: "h150", time: [0, 1], newtons: [100, 0] };

describe("importSentence()", () => {
  test.each([
    [nothing, "Nothing could be taken in."],
    [{ ...nothing, same: [one] }, "Nothing new: 1 document is on the bench already."],
    [{ ...nothing, added: [one] }, "Taken in: 1 document."],
    [{ ...nothing, added: [one, one], same: [one] }, "Taken in: 2 documents. 1 document was there already."],
    [{ ...nothing, curves: [curve] }, "Taken in: 1 thrust curve without a motor."],
    [
      { ...nothing, added: [one], issues: [issue] },
      "Taken in: 1 document. Not all of it is right: see below. It is kept as it came.",
    ],
    [
      { ...nothing, issues: [broken] },
      "Nothing could be taken in. The back-up a.json breaks off at line 12: none of its documents came in.",
    ],
    [
      { ...nothing, same: [one], issues: [broken] },
      "Nothing new: 1 document is on the bench already. The back-up a.json breaks off at line 12: none of its documents came in.",
    ],
    [
      { ...nothing, added: [one], issues: [broken] },
      "Taken in: 1 document. The back-up a.json breaks off at line 12: none of its documents came in.",
    ],
  ])("case %#", (report, sentence) => {
    expect(importSentence(report)).toBe(sentence);
  });
});

test("exportNames() numbers the files only where there are several", () => {
  expect(exportNames(1, "2026-05-02")).toEqual(["delaywright-bench-2026-05-02.json"]);
  expect(exportNames(2, "2026-05-02")[1]).toBe("delaywright-bench-2026-05-02-2.json");
});
