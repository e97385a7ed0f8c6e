import { expect, test } from "vitest";
import { ruleById } from "../../src/rules/all-rules.js";
import { checkRules } from "../../src/rules/check-rules.js";
import type { ClubRules } from "../../src/rules/club.js";
import { passing } from "../high-power-safety-code/facts.js";

/** The competition's requirements as a club's own rules; all from memory. */
const competition: ClubRules = {
  name: "Student competition",
  source: "NASA Student Launch handbook",
  limits: {
    "guide-exit-speed": { look: null, stop: 52 * 0.3048 },
    "margin-at-guide-exit": { look: null, stop: 2 },
    "landing-energy": { look: null, stop: 101.6863 },
    "descent-time": { stop: 90 },
  },
};

test("landing-energy asks to look above 75 ft lbf", () => {
  // 1e-6: seven digits are printed
  expect(Math.abs(ruleById("landing-energy")!.limits.look! / 101.6863 - 1)).toBeLessThan(1e-6);
  expect(ruleById("landing-energy")).toMatchObject({ status: "memory", sets: ["association", "none"] });
});

test("checkRules() holds a flight against a student competition's requirements", () => {
  const rows = [
    ["guide-exit-speed", { guideExitSpeed: 15.85 }, { guideExitSpeed: 15.84 }],
    [
      "margin-at-guide-exit",
      { marginAtGuideExit: { least: 2, most: 2 } },
      { marginAtGuideExit: { least: 1.99, most: 2 } },
    ],
    ["landing-energy", { landingEnergy: 101.6863 }, { landingEnergy: 101.69 }],
    ["descent-time", { descentTime: 90 }, { descentTime: 90.1 }],
  ] as const;
  expect(rows).toHaveLength(4);
  const verdict = (id: string, change: object) =>
    checkRules({ ...passing, ...change }, competition).find((finding) => finding.id === id)?.verdict;
  for (const [id, at, past] of rows) {
    expect(verdict(id, at), id).toBe("pass");
    expect(verdict(id, past), id).toBe("stop");
  }
});
