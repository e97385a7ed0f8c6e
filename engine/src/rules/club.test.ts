import fc from "fast-check";
import { expect, test } from "vitest";
import { passing, passingModel } from "../../reference/high-power-safety-code/facts.js";
import { rules } from "./all-rules.js";
import { checkRules } from "./check-rules.js";
import { type ClubLimit, type ClubRules, clubIssues } from "./club.js";
import type { RuleFacts } from "./facts.js";

const club = (limits: ClubRules["limits"], more: Partial<ClubRules> = {}): ClubRules => ({
  name: "Demo club",
  limits,
  ...more,
});

function found(facts: RuleFacts, rulesOfClub: ClubRules, id: string) {
  return checkRules(facts, rulesOfClub).find((finding) => finding.id === id);
}

test("checkRules() takes a club's tighter and looser numbers, and names the club as their source", () => {
  const tighter = club({ "wind-limit": { look: 3, stop: 6 } }, { source: "Demo club, field rules", edition: "2026" });
  expect(found(passing, tighter, "wind-limit")).toMatchObject({
    verdict: "look",
    limit: 3,
    source: "Demo club, field rules",
    edition: "2026",
    status: "the club's own",
  });
  expect(found({ ...passing, windSpeed: 6 }, tighter, "wind-limit")).toMatchObject({ verdict: "look" });
  expect(found({ ...passing, windSpeed: 6.01 }, tighter, "wind-limit")).toMatchObject({ verdict: "stop", limit: 6 });
  const looser = club({ "wind-limit": { stop: 12 } });
  expect(found({ ...passing, windSpeed: 12 }, looser, "wind-limit")).toMatchObject({
    verdict: "pass",
    source: "Demo club",
    edition: "",
  });
  expect(found(passing, tighter, "tilt-limit")).toMatchObject({ status: "verified" });
});

test("checkRules() keeps the limit that a club does not name, and drops the one it sets to null", () => {
  const stop = club({ "thrust-to-weight": { stop: 4 } });
  expect(found({ ...passing, thrustToWeight: 4.5 }, stop, "thrust-to-weight")).toMatchObject({
    verdict: "look",
    limit: 5,
  });
  expect(found({ ...passing, thrustToWeight: 3.9 }, stop, "thrust-to-weight")).toMatchObject({
    verdict: "stop",
    limit: 4,
  });
  const none = club({ "thrust-to-weight": { look: null } });
  expect(found({ ...passing, thrustToWeight: 3.5 }, none, "thrust-to-weight")).toMatchObject({
    verdict: "pass",
    limit: 3,
  });
  const both = club({ "thrust-to-weight": { look: null, stop: null } });
  expect(found({ ...passing, thrustToWeight: 1 }, both, "thrust-to-weight")).toBeUndefined();
});

test("checkRules() takes a club's numbers as multiples where the rule's are", () => {
  const strict = club({ "guide-exit-against-wind": { stop: 6 } });
  expect(found(passing, strict, "guide-exit-against-wind")).toMatchObject({ verdict: "stop", value: 20, limit: 24 });
});

test("checkRules() leaves out what a club turns off, and takes in a rule that has no limit but the club's", () => {
  expect(found({ ...passing, windSpeed: 20 }, club({ "wind-limit": "off" }), "wind-limit")).toBeUndefined();
  const slow = club({ "descent-time": { stop: 90 } });
  expect(found({ ...passing, descentTime: 90 }, slow, "descent-time")).toMatchObject({ verdict: "pass" });
  expect(found({ ...passing, descentTime: 91 }, slow, "descent-time")).toMatchObject({ verdict: "stop", limit: 90 });
});

test("checkRules() starts a club from no codes where it says so, with the rules it names", () => {
  const own = club({ "wind-limit": { stop: 5 } }, { base: "none" });
  const ids = checkRules(passing, own).map(({ id }) => id);
  expect(ids).toContain("wind-limit");
  expect(ids).toContain("thrust-to-weight");
  expect(ids).not.toContain("tilt-limit");
});

test("checkRules() takes a club's table of distances, and its single number before any table", () => {
  const distances = [
    { upTo: 320, single: 10, complex: 20 },
    { upTo: 1280, single: 70, complex: 90, cleared: 40 },
  ];
  const own = club({}, { distances });
  expect(found(passing, own, "personnel-distance")).toMatchObject({
    verdict: "stop",
    limit: 70,
    status: "the club's own",
  });
  expect(found({ ...passing, complex: true }, own, "site-edge-distance")).toMatchObject({ verdict: "pass", limit: 90 });
  expect(found(passing, own, "cleared-diameter")).toMatchObject({ verdict: "stop", limit: 40 });
  expect(found({ ...passing, totalImpulse: 300 }, own, "cleared-diameter")).toBeUndefined();
  expect(found({ ...passing, totalImpulse: 1281 }, own, "personnel-distance")).toMatchObject({
    verdict: "not-checked",
    details: ["beyond-table"],
  });
  const single = club({ "personnel-distance": { stop: 55 } }, { distances });
  expect(found(passing, single, "personnel-distance")).toMatchObject({ verdict: "pass", limit: 55 });
});

test("clubIssues() reports what cannot be followed, and checkRules() says it is not checked", () => {
  const rows = [
    { upTo: 320, single: 10, complex: 20 },
    { upTo: 320, single: 70, complex: 90 },
  ];
  const wrong = club(
    {
      "moon-limit": { stop: 3 },
      constructor: { stop: 1 },
      "cp-ahead-of-balance": "off",
      "tilt-sector": { stop: 1 },
      "wind-limit": { stop: Number.NaN },
      "tilt-limit": { stop: 0.2 },
    },
    { distances: rows },
  );
  const issues = [
    ["rule-unknown", "limits.moon-limit"],
    ["rule-unknown", "limits.constructor"],
    ["rule-is-fixed", "limits.cp-ahead-of-balance"],
    ["rule-has-no-limit", "limits.tilt-sector"],
    ["limit-not-a-number", "limits.wind-limit"],
    ["distances-not-rising", "distances[1]"],
  ];
  expect(clubIssues(wrong).map(({ code, path }) => [code, path])).toEqual(issues);
  const findings = checkRules(passing, wrong);
  const notFollowed = findings.filter(({ title }) => title === "club-rule");
  expect(notFollowed.map(({ id, details, verdict }) => [details[0], id, verdict])).toEqual(
    issues.map((issue) => [...issue, "not-checked"]),
  );
  // what can be followed is; what cannot leaves the base's rule standing
  expect(findings.find(({ id }) => id === "tilt-limit")?.limit).toBe(0.2);
  expect(findings.find(({ id }) => id === "wind-limit")?.limit).toBeCloseTo(8.9408, 12);
  expect(findings.find(({ id }) => id === "personnel-distance")?.limit).toBeCloseTo(30.48, 12);
  expect(findings.some(({ id }) => id === "cp-ahead-of-balance")).toBe(true);
  expect(clubIssues(club({}, { distances: [] }))).toEqual([{ code: "distances-not-rising", path: "distances[0]" }]);
});

const number = fc.oneof(fc.double(), fc.constantFrom(null, undefined));
const change = fc.oneof(
  fc.record({ look: number, stop: number }, { requiredKeys: [] }),
  fc.constantFrom("off", null, 3, "on", []),
);
const id = fc.oneof(
  fc.constantFrom(...rules.map((rule) => rule.id)),
  fc.string(),
  fc.constantFrom("__proto__", "toString"),
);
const row = fc.record({ upTo: fc.double(), single: fc.double(), complex: fc.double() });

test("checkRules() never throws on a club's rules: each entry is followed or reported", () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(id, change)),
      fc.option(fc.array(row), { nil: undefined }),
      fc.constantFrom(passing, passingModel, {}),
      (entries, distances, facts: RuleFacts) => {
        const limits = Object.fromEntries(entries) as Record<string, ClubLimit | "off">;
        const strange = club(limits, distances === undefined ? {} : { distances });
        const findings = checkRules(facts, strange);
        const notFollowed = findings.filter(({ title }) => title === "club-rule").map((finding) => finding.id);
        expect(notFollowed).toEqual(clubIssues(strange).map(({ path }) => path));
        for (const name of Object.keys(limits))
          if (!rules.some((rule) => rule.id === name)) expect(notFollowed).toContain(`limits.${name}`);
        for (const { limit } of findings) expect(limit === null || Number.isFinite(limit)).toBe(true);
      },
    ),
    { numRuns: 500 },
  );
});

test("checkRules() under a club's tighter number is never milder", () => {
  const value = fc.double({ min: 0, max: 20, noNaN: true });
  fc.assert(
    fc.property(value, value, value, (windSpeed, a, b) => {
      const under = (stop: number) => found({ ...passing, windSpeed }, club({ "wind-limit": { stop } }), "wind-limit");
      if (under(Math.max(a, b))?.verdict === "stop") expect(under(Math.min(a, b))?.verdict).toBe("stop");
    }),
  );
});
