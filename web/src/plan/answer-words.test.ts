import { percent } from "@delaywright/documents";
import { describe, expect, test } from "vitest";
import { inventedSetting, inventedTold } from "../standing/invented.js";
import { badWords } from "../standing/outcome-words.js";
import { answerHeadline, checksWords, issueWords, openingLines, spokenWords } from "./answer-words.js";

const plain = (text: string): string => text.replace(/\s/gu, " ");

describe("answerHeadline()", () => {
  test("says what to cut, as the command line does", () => {
    const { lead, detail } = answerHeadline(inventedTold().data, "metric");
    expect(plain(lead)).toBe("Cut to 9 s");
    expect(plain(detail)).toBe("take 5 s out, end A with the ring, 4.0 mm (5/32 in)");
    expect(plain(answerHeadline(inventedTold().data, "imperial").detail)).toMatch(/, 5\/32 in \(4.0 mm\)$/);
  });

  test("says what an over-cut motor is now, and that a plugged one has no delay", () => {
    const over = answerHeadline(inventedTold({ data: { overCut: { delay: 8.3 } } }).data, "metric");
    expect(plain(over.lead)).toBe("Now 8.3 s");
    expect(answerHeadline(inventedTold({ data: { toCut: null } }).data, "metric").lead).toBe("No delay");
  });
});

describe("openingLines()", () => {
  test("rounds bounds so that they stay true", () => {
    const lines = openingLines(inventedSetting(), "metric");
    expect(plain(lines?.below ?? "")).toBe("19 m/s");
    expect(plain(lines?.above ?? "")).toBe("565 m");
    // 18.2 m/s is 59.71 ft/s, 565.7 m is 1855.97 ft
    const imperial = openingLines(inventedSetting(), "imperial");
    expect(plain(imperial?.below ?? "")).toBe("60 ft/s");
    expect(plain(imperial?.above ?? "")).toBe("1855 ft");
  });

  test("is null where every flight lands before it opens", () => {
    const none = { p05: null, p50: null, p90: null, p95: null };
    expect(openingLines(inventedSetting({ openingSpeed: none }), "metric")).toBeNull();
  });
});

describe("issueWords()", () => {
  const issue = {
    file: "r.rocket.json",
    path: "fins[0].root",
    accepted: "a length with its unit",
    example: '"180 mm"',
  };

  test("says where, what was found, what is accepted, and an example", () => {
    expect(issueWords({ ...issue, code: "missing", found: "nothing" })).toEqual({
      wrong: "Fins 1, root: missing",
      right: 'A length with its unit is accepted, for example "180 mm".',
    });
    expect(issueWords({ ...issue, code: "unit-missing", found: '"180"' }).wrong).toBe(
      'Fins 1, root: the unit is missing: "180" found',
    );
    expect(issueWords({ ...issue, path: "", code: "file-missing", found: "nothing" }).wrong).toMatch(
      /^The document: there is no such file/,
    );
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
    expect(of("pass", "pass")).toEqual({
      head: "All checks within",
      first: "",
      rest: "2 looked at",
      stops: false,
    });
    expect(of("pass", "look")).toMatchObject({
      head: "One check says look",
      rest: "1 within, none says stop",
      stops: false,
    });
    expect(of("look", "stop", "stop")).toMatchObject({
      head: "2 checks say stop",
      rest: "0 within, 1 says look",
      stops: true,
    });
    expect(of("look").first).toBe("Guide-exit speed");
    const rough = inventedTold({ data: { checks: [check("pass"), check("not-checked")] } }).data;
    expect(checksWords(rough, true).head).toBe("No check says stop or look so far");
    expect(of("pass", "not-checked")).toEqual({
      head: "No check says stop or look",
      first: "",
      rest: "1 within, 1 not checked",
      stops: false,
    });
    expect(of("stop", "not-checked").rest).toBe("0 within, 0 say look, 1 not checked");
  });
});

describe("badWords()", () => {
  test("leaves out what does not make one in a hundred", () => {
    expect(badWords({ ...inventedSetting().odds, leanFast: 0.004 })).toBe("early fast 3, late fast 4");
  });
});

describe("spokenWords()", () => {
  test("says what to cut, the odds, and what the checks say", () => {
    const { data } = inventedTold();
    const words = plain(spokenWords(data, "metric"));
    const odds = plain(percent(data.settings.find(({ delay }) => delay === data.toCut?.delay)?.odds.clean ?? 0));
    expect(words).toBe(
      `Cut to 9 s. take 5 s out, end A with the ring, 4.0 mm (5/32 in). ${odds} clean. ${plain(checksWords(data).head)}.`,
    );
  });

  test("says no odds of a motor without delay", () => {
    const { data } = inventedTold({ data: { toCut: null } });
    expect(spokenWords(data, "metric")).not.toMatch(/clean|NaN|undefined/);
  });
});
