import { describe, expect, test } from "vitest";
import { inventedSetting, inventedTold } from "../standing/invented.js";
import { badWords } from "../standing/outcome-words.js";
import { above, answerHeadline, below, checksWords, openingLines } from "./answer-words.js";

const plain = (text: string): string => text.replace(/\s/gu, " ");

describe("answerHeadline()", () => {
  test("says what to cut, as the command line does", () => {
    const { lead, detail } = answerHeadline(inventedTold().data);
    expect(plain(lead)).toBe("Cut to 9 s");
    expect(plain(detail)).toBe("take 5 s out, end A with the ring, 4.0 mm (5/32 in)");
  });

  test("says what an over-cut motor is now, and that a plugged one has no delay", () => {
    const over = answerHeadline(inventedTold({ data: { overCut: { delay: 8.3 } } }).data);
    expect(plain(over.lead)).toBe("Now 8.3 s");
    expect(answerHeadline(inventedTold({ data: { toCut: null } }).data).lead).toBe("No delay");
  });
});

describe("openingLines()", () => {
  test("rounds bounds so that they stay true", () => {
    const lines = openingLines(inventedSetting(), "metric");
    expect(plain(lines?.below ?? "")).toBe("19 m/s");
    expect(plain(lines?.above ?? "")).toBe("565 m");
    expect(plain(below(18, "metric"))).toBe("18 m/s");
    // 18.2 m/s is 59.71 ft/s, 565.7 m is 1855.97 ft
    expect(plain(below(18.2, "imperial"))).toBe("60 ft/s");
    expect(plain(above(565.7, "imperial"))).toBe("1855 ft");
  });

  test("is null where every flight lands before it opens", () => {
    const none = { p05: null, p50: null, p90: null, p95: null };
    expect(openingLines(inventedSetting({ openingSpeed: none }), "metric")).toBeNull();
  });
});

describe("checksWords()", () => {
  const check = (verdict: string) => ({
    code: "guide-exit-speed",
    verdict,
    value: 14,
    limit: 15,
    unit: "m/s",
    sense: "least",
    details: [],
    missing: [],
    source: "common practice",
  });
  const of = (...verdicts: string[]) => checksWords(inventedTold({ data: { checks: verdicts.map(check) } }).data);

  test("names the weightiest first", () => {
    expect(of("pass", "pass")).toEqual({ head: "All checks within", first: "", rest: "2 looked at" });
    expect(of("pass", "look")).toMatchObject({ head: "One check says look", rest: "1 within, none says stop" });
    expect(of("look", "stop", "stop")).toMatchObject({ head: "2 checks say stop", rest: "0 within, 1 says look" });
    expect(of("look").first).toBe("Guide-exit speed");
    expect(of("pass", "not-checked")).toEqual({
      head: "No check says stop or look",
      first: "",
      rest: "1 within, 1 not checked",
    });
    expect(of("stop", "not-checked").rest).toBe("0 within, 0 say look, 1 not checked");
  });
});

describe("badWords()", () => {
  test("leaves out what does not make one in a hundred", () => {
    expect(badWords({ ...inventedSetting().odds, leanFast: 0.004 })).toBe("early fast 3, late fast 4");
  });
});
