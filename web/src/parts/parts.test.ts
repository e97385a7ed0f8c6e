import { checkField, fieldAt } from "@delaywright/documents";
import { describe, expect, test, vi } from "vitest";
import { withRows } from "./change-rows.js";
import { addressOfDocument } from "./document-address.js";
import { fieldId } from "./field-id.js";
import { problemWords } from "./field-notes.js";
import { joinField, lastKeyOf, leadsTo, parentOf, valueAt, withValue } from "./field-path.js";
import { readNumber } from "./number-field.js";
import { percentWords } from "./odds-figure.js";
import { emptied } from "./use-field.js";

vi.mock("../store/index.js", () => ({}));

describe("field paths", () => {
  test("parentOf() and lastKeyOf() part what joinField() joins", () => {
    for (const [base, rest] of [
      ["", "name"],
      ["fins[0]", "root"],
      ["points", "[2]"],
      ["weatherRange.wind", "[1]"],
    ] as const) {
      expect(parentOf(joinField(base, rest))).toBe(base);
      expect(lastKeyOf(joinField(base, rest))).toBe(rest);
    }
  });

  test("withValue() writes what valueAt() reads, makes what is missing and leaves the rest alone", () => {
    const raw = { name: "x", fins: [{ root: "1 mm" }] };
    const next = withValue(raw, "fins[1].root", "2 mm");
    expect(next).toEqual({ name: "x", fins: [{ root: "1 mm" }, { root: "2 mm" }] });
    expect(next.fins[0]).toBe(raw.fins[0]);
    expect(valueAt(next, "fins[1].root")).toBe("2 mm");
    expect(valueAt(withValue(raw, "bay.length", "1 m"), "bay.length")).toBe("1 m");
    expect(withValue(raw, "fins", undefined)).toEqual({ name: "x" });
  });

  test("leadsTo() goes by whole steps", () => {
    expect(leadsTo("fins[0]", "fins[0].root")).toBe(true);
    expect(leadsTo("fins[0].root", "fins[0].root")).toBe(true);
    expect(leadsTo("nose", "noses")).toBe(false);
  });

  test("fieldId() holds no white space, whatever the file is called", () => {
    expect(fieldId("my rocket.json", "fins[0].root")).toMatch(/^\S+$/);
  });

  test("addressOfDocument() keeps odd file names in one piece", () => {
    expect(addressOfDocument("rocket", "a/b#c.rocket.json")).toBe("#/rockets/a%2Fb%23c.rocket.json");
    expect(addressOfDocument("log", "a.log.json")).toBeUndefined();
  });
});

describe("readNumber()", () => {
  test.each([
    ["0.8", 0.8],
    ["80 %", 0.8],
    ["99.5%", 0.995],
    ["0,5", 0.5],
    [".5", 0.5],
    ["3.", 3],
    ["−2", -2],
    ["1e9", undefined],
    ["seven", undefined],
    ["", undefined],
    ["NaN", undefined],
  ])("reads %j as %s", (text, value) => {
    expect(readNumber(text)).toBe(value);
  });
});

describe("percentWords()", () => {
  test("never rounds odds to certainty", () => {
    expect(percentWords(0.876)).toBe("88\u202f%");
    expect(percentWords(0.9993)).toBe("over 99\u202f%");
    expect(percentWords(0.0004)).toBe("under 1\u202f%");
    expect([percentWords(1), percentWords(0.992)]).toEqual(["over 99\u202f%", "over 99\u202f%"]);
    expect([percentWords(0), percentWords(0.008)]).toEqual(["under 1\u202f%", "under 1\u202f%"]);
    expect(percentWords(Number.NaN)).toBe("–");
  });
});

describe("emptied()", () => {
  const plan = {
    raw: { kind: "plan", ballast: { mass: "50 g", at: "200 mm" }, weather: { wind: "2 m/s" } },
    drafts: {},
  };

  test("keeps what the document needs", () => {
    expect(emptied(plan, "plan", "ballast.mass")).toBeUndefined();
    expect(emptied({ raw: { kind: "plan", name: "x" }, drafts: {} }, "plan", "name")).toBeUndefined();
  });

  test("takes away what would be left empty around the field", () => {
    expect(emptied({ ...plan, drafts: { "ballast.at": "" } }, "plan", "ballast.mass")).toBe("ballast");
    expect(emptied(plan, "plan", "weather.wind")).toBe("weather");
    const range = { raw: { weatherRange: { wind: ["0 m/s", "8 m/s"] } }, drafts: { "weatherRange.wind[1]": "" } };
    expect(emptied(range, "plan", "weatherRange.wind[0]")).toBe("weatherRange");
    expect(emptied({ ...range, drafts: {} }, "plan", "weatherRange.wind[0]")).toBeUndefined();
  });
});

describe("withRows()", () => {
  const entry = { kind: "rocket", raw: { kind: "rocket", fins: [{ root: "1 mm" }, { root: "2 mm" }] } } as const;

  test("moves, removes and adds rows, and keeps the rows themselves", () => {
    const moved = withRows(entry, "fins", [1, 0, null], () => ({}));
    expect(moved["fins"]).toEqual([{ root: "2 mm" }, { root: "1 mm" }, {}]);
    expect((moved["fins"] as unknown[])[0]).toBe(entry.raw.fins[1]);
  });

  test("takes an optional list away with its last row, and keeps one that is needed", () => {
    expect(withRows(entry, "fins", [], () => ({}))).toEqual({ kind: "rocket" });
    const field = { kind: "field", raw: { keepOff: [{ points: [["0 m", "0 m"]] }] } } as const;
    expect(fieldAt("field", "keepOff[0].points")?.required).toBe(true);
    expect(
      valueAt(
        withRows(field, "keepOff[0].points", [], () => []),
        "keepOff[0].points",
      ),
    ).toEqual([]);
  });
});

describe("problemWords()", () => {
  test("says what is wrong, how to write it, and what counts until then", () => {
    const issue = checkField("rocket", "fins[0].root", "180");
    if (issue === undefined) throw new Error("180 should be wrong");
    const words = problemWords(issue, "rocket", "fins[0].root", "180", "170 mm");
    expect(words.wrong).toMatch(/^The unit is missing/);
    expect(words.mend).toBe("Write 180 mm or 7 1/16 in. The last right value counts: 170 mm.");
  });
});
