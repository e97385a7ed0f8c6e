import { describe, expect, test } from "vitest";
import { checkCells } from "./check-cells.js";
import { landingSentences } from "./landing-words.js";

const plain = (text: string): string => text.replace(/\s/gu, " ");

describe("checkCells()", () => {
  const check = {
    code: "guide-exit-speed",
    verdict: "pass",
    value: 15.5,
    limit: 15,
    unit: "m/s",
    id: "guide-exit-speed",
    sense: "least",
    details: [],
    missing: [],
    source: "common practice",
    edition: "",
    status: "common practice, no source",
  } as const;

  test("has its figures in the flyer's units", () => {
    expect(plain(checkCells(check, "metric").limit)).toBe("least 15 m/s");
    // 15 m/s is 49.2 ft/s, 15.5 m/s is 50.9 ft/s
    expect(plain(checkCells(check, "imperial").limit)).toBe("least 49 ft/s");
    expect(plain(checkCells(check, "imperial").value)).toBe("51 ft/s");
  });

  test("leaves figures without a unit as they are", () => {
    const plainCheck = { ...check, code: "thrust-to-weight", value: 6.65, limit: 5, unit: "" } as const;
    expect(checkCells(plainCheck, "imperial")).toEqual(checkCells(plainCheck, "metric"));
  });
});

describe("landingSentences()", () => {
  const shares = { opened: { outside: 0.2, keepOff: [0.004] }, unopened: { outside: 0, keepOff: [0] } };
  const sample = { unopened: { time: new Float64Array(512) } };
  const pictures = { shares, sample, delay: 9 } as unknown as Parameters<typeof landingSentences>[0];
  const zones = {
    origin: { east: 0, north: 0 },
    boundary: null,
    keepOff: [{ name: "car park", points: [] }],
    people: [],
  };

  test("tells unopened landings first, and none as none", () => {
    expect(landingSentences(pictures, zones).map(plain)).toEqual([
      "Unopened, of 512 flights: none on car park, none beyond the edge.",
      "Opened, of 512 flights: under 1 % on car park, 20 % beyond the edge.",
    ]);
  });

  test("says what was not looked at", () => {
    expect(landingSentences(pictures, null)[0]).toContain("No field is chosen");
    expect(landingSentences(pictures, { ...zones, keepOff: [] })[0]).toContain("none are looked at");
  });
});
