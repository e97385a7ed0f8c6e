import { describe, expect, test } from "vitest";
import { failureWords, memoryWords } from "./notice-words.js";

describe("failureWords() and memoryWords()", () => {
  test("say what is in memory, and what to do", () => {
    expect(failureWords("quota", ["Demo rocket 76"])).toEqual({
      lead: "No room left on this device.",
      what: "Your last change, in Demo rocket 76, is still in memory and nothing is lost. Export now, then make room on the device and try again.",
    });
    expect(failureWords("blocked", []).what).toBe("Close the other tabs of this app and try again.");
  });

  test("count the documents", () => {
    expect(memoryWords(["A", "B"])).toContain("in A and 1 more, are");
    expect(memoryWords(["A", "B", "C"])).toContain("in A and 2 more, are");
  });
});
