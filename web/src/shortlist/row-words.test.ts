import type { RankedData } from "@delaywright/documents";
import { describe, expect, test } from "vitest";
import { inventedSetting } from "../standing/invented.js";
import { figureSentences, leadWords, noteSentences, sharedNotes } from "./row-words.js";

const plain = (text: string): string => text.replaceAll("\u00a0", " ");
const toCut = {
  ...inventedSetting(),
  reachesLeast: true,
  reachesHolds: true,
  why: "most-clean",
} as unknown as NonNullable<RankedData["toCut"]>;
const row: RankedData = {
  file: "demo-h146.motor.json",
  name: "Demo H146",
  maker: null,
  designation: null,
  motorClass: "H",
  totalImpulse: 250,
  averageThrust: 146,
  thrustToWeight: 6.62,
  price: null,
  launch: { guideExitSpeed: 21.44, marginAtGuideExit: 1.5, marginAtBurnout: 2 },
  height: { p05: 640, p50: 700.4, p95: 761.2 },
  toCut,
  looks: [],
  notChecked: [],
};
const unknown = { code: "motor-certified", missing: ["motorCertified"] } as const;

describe("leadWords()", () => {
  test("puts the cut first, then its odds without their error", () => {
    expect(plain(leadWords(row, 500))).toBe("Cut to 9 s · 93 % clean, holds 99.9 %");
  });

  test("does not speak of a cut where none is needed, allowed or possible", () => {
    const uncut = { ...toCut, removed: 0, depth: 0, end: null, spacers: [] } as unknown as typeof toCut;
    expect(plain(leadWords({ toCut: uncut }, 500))).toMatch(/^Leave it at 9 s, no cut · 93 % clean/);
    expect(leadWords({ toCut: null }, 500)).toBe("No delay to cut");
  });
});

describe("figureSentences()", () => {
  test("tells height and what 95 % stay below, guide exit, thrust to weight, opening speed", () => {
    expect(figureSentences(row, "metric").map(plain)).toEqual([
      "Top 700 m; 95 % stay below 761 m.",
      "Leaves the guide at 21.4 m/s, thrust to weight 6.6.",
      "Opens below 18.2 m/s in 9 of 10 flights.",
    ]);
    expect(plain(figureSentences({ ...row, price: 45 }, "metric").at(-1) ?? "")).toBe("Price 45.");
  });

  test("speaks in the flyer's own units", () => {
    // 700.4 m / 0.3048 = 2297.9 ft; 21.44 m/s / 0.3048 = 70.3 ft/s
    expect(figureSentences(row, "imperial").map(plain).join(" ")).toMatch(/Top 2298 ft;.* at 70 ft\/s/);
  });

  test("leaves out what is not known", () => {
    const early = { ...row, height: null, launch: null, toCut: null };
    expect(figureSentences(early, "metric")).toEqual(["Thrust to weight 6.6."]);
  });
});

test("sharedNotes() finds what is to be said of every motor, and nothing where there is one alone", () => {
  const a = { ...row, notChecked: [unknown] };
  const b = { ...a, file: "b", looks: [{ code: "over-stable", value: 3.1, limit: 3, unit: "", sense: "most" }] };
  const rows = [a, b] as unknown as RankedData[];
  const shared = sharedNotes(rows, "metric");
  expect([...shared]).toEqual([expect.stringMatching(/^not checked: certificate of the motor/)]);
  expect(noteSentences(a, shared, "metric")).toEqual([]);
  expect(noteSentences(rows[1]!, shared, "metric")).toEqual([expect.stringMatching(/^[A-Z].* 3\.1, most 3\.$/)]);
  expect(noteSentences(a, new Set(), "metric")).toEqual([expect.stringMatching(/^Not checked: certificate.*\.$/)]);
  expect(sharedNotes([a], "metric").size).toBe(0);
  expect(sharedNotes([...rows, row], "metric").size).toBe(0);
});
