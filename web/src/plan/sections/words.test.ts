import { describe, expect, test } from "vitest";
import { landingSentences } from "./landing-words.js";

const plain = (text: string): string => text.replace(/\s/gu, " ");

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
