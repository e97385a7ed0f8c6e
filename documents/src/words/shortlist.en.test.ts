import type { Refusal } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import type { RankedData, RefusedData, ShortlistData } from "../answer/shortlist-data.js";
import {
  aimChoices,
  aimNote,
  aimWords,
  motorCutWords,
  refusalWords,
  rowNotes,
  shortlistHead,
  wordForRefusal,
} from "./shortlist.en.js";

const plain = (text: string): string => text.replaceAll("\u00a0", " ");
const odds = { clean: 0.91, earlyFast: 0, lateFast: 0.09, leanFast: 0, low: 0, grounded: 0, holds: 0.995 };
const toCut = {
  delay: 9,
  removed: 5,
  end: "A",
  spacers: ["ring"],
  depth: 0.003969,
  odds: { ...odds, error: 0.01, holdsError: 0.001 },
  openingSpeed: { p05: 3, p50: 12, p90: 19, p95: 22 },
  openingHeight: { p05: 500, p10: 520, p50: 600 },
  secondsFromApogee: { p05: -1, p50: 0, p95: 1 },
  delaySd: 0.9,
  firesFirst: null,
  reachesLeast: true,
  reachesHolds: true,
  why: "best-odds",
} as const;
const figures = { motorClass: "H", totalImpulse: 250, averageThrust: 150, thrustToWeight: 6.6 };
const row: RankedData = {
  file: "a.json",
  name: "Demo A",
  maker: null,
  designation: null,
  price: null,
  ...figures,
  launch: { guideExitSpeed: 15, marginAtGuideExit: 2, marginAtBurnout: 2 },
  height: { p05: 560, p50: 614, p95: 667 },
  toCut,
  looks: [],
  notChecked: [],
};
const because = (
  code: Refusal["code"],
  value: number | null,
  limit: number | null,
  change: Partial<Refusal> = {},
): Refusal => ({
  code,
  value,
  limit,
  unit: "",
  sense: "least",
  details: [],
  source: "",
  edition: "",
  status: "verified",
  ...change,
});
const refused = (name: string, ...refusals: readonly Refusal[]): RefusedData => ({ ...row, name, refusals });
const data: ShortlistData = {
  context: { plan: "Third flight", rocket: "Demo rocket 76", windGiven: true },
  aim: { by: "nearest-height", height: 600 },
  limits: { openingSpeed: 20, openingHeight: 100, leastClean: 0.8, leastHolds: 0.99 },
  ranked: [row],
  refused: [],
  unjudged: [],
  seed: 1,
  draws: 500,
  model: "pitching",
};

describe("shortlistHead()", () => {
  test("says how many are left, by what they are ordered, and the first with its cut and its odds", () => {
    expect(plain(shortlistHead(data))).toBe(
      "1 of 1 motors is left for Demo rocket 76 here today, nearest to 600 m first. Demo A: cut to 9 s; 91 % clean (± 1.0), holds 99.5 %; top 614 m.",
    );
  });

  test("says that none is left, or that none was found", () => {
    const motors = [refused("B", because("ceiling", 1000, 900))];
    const none = { ...data, ranked: [], refused: [{ code: "ceiling" as const, motors }] };
    expect(shortlistHead(none)).toBe("None of 1 motors is left for Demo rocket 76 here today.");
    expect(shortlistHead({ ...none, refused: [] })).toBe("No motor was found there.");
  });
});

test("motorCutWords() shows no cut where none may be shown", () => {
  expect(plain(motorCutWords({ ...toCut, end: null, spacers: [], depth: null }))).toBe("9 s, no cut is shown");
  expect(plain(motorCutWords({ ...toCut, removed: 0, end: null, spacers: [], depth: 0 }))).toBe(
    "leave it at 9 s, no cut",
  );
  expect(motorCutWords(null)).toBe("no delay to cut");
});

describe("refusalWords()", () => {
  const words = (code: Refusal["code"], ...motors: readonly RefusedData[]) => {
    const [group] = refusalWords({ refused: [{ code, motors }] });
    return {
      head: plain(group?.head ?? ""),
      groups: group?.groups.map((each) => ({ ...each, motors: each.motors.map(plain) })),
    };
  };

  test("says a common limit once, and each value beside its motor", () => {
    const wide = (name: string, value: number) =>
      refused(name, because("too-wide-for-mount", value, 0.038, { unit: "m", sense: "most" }));
    expect(words("too-wide-for-mount", wide("B", 0.054), wide("C", 0.075))).toEqual({
      head: "Too wide for the mount, most 38 mm",
      groups: [{ motors: ["B 54 mm", "C 75 mm"], note: "" }],
    });
  });

  test("says limits that differ beside each motor", () => {
    const asks = (name: string, limit: number) => refused(name, because("certification-level", 0, limit));
    expect(words("certification-level", asks("B", 1), asks("C", 2)).groups).toEqual([
      { motors: ["B 0, least 1", "C 0, least 2"], note: "" },
    ]);
  });

  test("says why no delay is good enough, and what else speaks against a motor, once for those that share it", () => {
    const why = { unit: "odds", details: ["grounded", "does-not-hold", "out-of-reach-shorter"] } as const;
    const late = because("no-setting-holds", 0.5, 0.99, why);
    const unclean = because("below-least-clean", 0.1, 0.8, why);
    const tool = because("tool-not-named", null, null, { sense: "none" });
    const shorter = "it wants a shorter delay than this element and this tool can make";
    expect(
      words("no-setting-holds", refused("B", late, unclean), refused("C", late), refused("D", late, tool)),
    ).toEqual({
      head: "No delay that can be made holds often enough, least 99.0 %",
      groups: [
        { motors: ["B 50 %", "C 50 %"], note: shorter },
        { motors: ["D 50 %"], note: `${shorter}; also: ${wordForRefusal("tool-not-named")}` },
      ],
    });
  });
});

test("rowNotes() tells looks with value and limit, and what could not be checked", () => {
  const { code: _, ...look } = because("thrust-to-weight", 4.9, 5);
  const notes = rowNotes({
    looks: [{ code: "thrust-to-weight", ...look }],
    notChecked: [{ code: "motor-certified", missing: ["motorCertified"] }],
  });
  expect(notes).toEqual([
    "look: thrust to weight 4.9, least 5",
    "not checked: certificate of the motor, since who certified the motor is not known",
  ]);
});

test("aims have words of their own, and an order that rests on unknown prices says so", () => {
  expect(new Set(aimChoices.map(({ word }) => word)).size).toBe(5);
  expect(plain(aimWords(data.aim))).toBe("nearest to 600 m");
  const cheapest = { ...data, aim: { by: "cheapest" as const, height: null } };
  expect(aimNote(data)).toBeNull();
  expect(aimNote(cheapest)).toBe("No price is known: they stand by their odds.");
  expect(aimNote({ ...cheapest, ranked: [{ ...row, price: 3 }, row] })).toBe("Motors without a price come last (1).");
  expect(aimNote({ ...cheapest, ranked: [{ ...row, price: 3 }] })).toBeNull();
});
