import { describe, expect, test } from "vitest";
import { drawnAt, lastStep } from "./filling.js";

const parts = 3;

/** How much of each part is drawn, step by step. */
const filled = (narrow: boolean) =>
  Array.from({ length: lastStep(parts, narrow) }, (_, i) =>
    Array.from({ length: parts }, (_, at) => drawnAt(at, i + 1, parts, narrow)),
  );

describe("drawnAt()", () => {
  test("fills a wide sheet with what is seen, part by part, then with what is folded away", () => {
    expect(filled(false)).toEqual([
      ["open", "none", "none"],
      ["open", "open", "none"],
      ["open", "open", "open"],
      ["whole", "open", "open"],
      ["whole", "whole", "open"],
      ["whole", "whole", "whole"],
    ]);
  });

  test("draws all of a sheet that is full, however it is turned", () => {
    for (const narrow of [true, false])
      for (let at = 0; at < parts; at++) expect(drawnAt(at, Number.POSITIVE_INFINITY, parts, narrow)).toBe("whole");
  });

  test("shows all heads of a narrow sheet at once", () => {
    expect(filled(true)).toEqual([
      ["whole", "open", "open"],
      ["whole", "whole", "open"],
      ["whole", "whole", "whole"],
    ]);
  });
});
