import { expect, test } from "vitest";
import { ruleById } from "../../src/rules/all-rules.js";
import { aviationClass, aviationDuties } from "../../src/rules/aviation-class.js";
import type { RuleFacts } from "../../src/rules/facts.js";
import { passing } from "../high-power-safety-code/facts.js";

const foot = 0.3048;

function judged(id: string, change: RuleFacts) {
  const rule = ruleById(id);
  if (rule === undefined) throw new Error(`no rule ${id}`);
  return rule.judge({ ...passing, ...change });
}

test("aviationClass() divides as 101.22 does", () => {
  const one = { propellantMass: 0.125, liftOffMass: 1.5, lightMaterials: true, totalImpulse: 160 };
  const rows = [
    [one, 1],
    [{ ...one, propellantMass: 0.1251 }, 2],
    [{ ...one, liftOffMass: 1.501 }, 2],
    [{ ...one, lightMaterials: false }, 2],
    [{ ...one, propellantMass: 20, totalImpulse: 40_960 }, 2],
    [{ ...one, propellantMass: 20, totalImpulse: 40_960.1 }, 3],
  ] as const;
  expect(rows).toHaveLength(6);
  for (const [facts, expected] of rows) expect(aviationClass(facts)).toBe(expected);
  // 9,208 lbf s as printed is the same limit, rounded
  expect(Math.round(40_960 / 4.4482216152605)).toBe(9208);
});

test("aviationClass() names what it cannot tell without", () => {
  expect(aviationClass({})).toEqual(["propellantMass", "liftOffMass", "lightMaterials"]);
  expect(aviationClass({ propellantMass: 0.1, liftOffMass: 1 })).toEqual(["lightMaterials"]);
  expect(aviationClass({ liftOffMass: 2 })).toEqual(["totalImpulse"]);
});

test("aviation-class stops beyond what 1.1 calls an amateur rocket: 889,600 N s, 150 km", () => {
  expect(judged("aviation-class", { totalImpulse: 889_600 })?.verdict).toBe("look");
  expect(judged("aviation-class", { totalImpulse: 889_600.1 })?.verdict).toBe("stop");
  expect(judged("aviation-class", { height95: 150_000 })?.verdict).toBe("pass");
  expect(judged("aviation-class", { height95: 150_000.1 })?.verdict).toBe("stop");
  // 200,000 lbf s, as printed beside it: 889,644 N s, rounded there
  expect(200_000 * 4.4482216152605).toBeCloseTo(889_644.3, 1);
});

/** Rule, fact, what is just allowed, what is just not. */
const limits: readonly (readonly [id: string, at: RuleFacts, past: RuleFacts, section: string])[] = [
  ["cloud-cover", { cloudCover: 0.5 }, { cloudCover: 0.51 }, "101.25(a)"],
  ["visibility", { visibility: 5 * 1609.344 }, { visibility: 4.99 * 1609.344 }, "101.25(b)"],
  ["cloud-entry", { height95: 700, cloudBase: 700 }, { height95: 701, cloudBase: 700 }, "101.25(c)"],
  ["daylight", { daylight: true }, { daylight: false }, "101.25(d)"],
  ["airport-distance", { airportDistance: 9260 }, { airportDistance: 9259 }, "101.25(e)"],
  ["controlled-airspace", { controlledAirspace: false }, { controlledAirspace: true }, "101.25(f)"],
  ["uninvolved-distance", { uninvolvedDistance: 457 }, { uninvolvedDistance: 456.9 }, "101.25(g)"],
  ["adult-in-charge", { adultInCharge: true }, { adultInCharge: false }, "101.25(h)"],
  ["fire-means", { fireMeans: true }, { fireMeans: false }, "101.25(i)"],
  ["aviation-notice", { noticeBefore: 24 * 3600 }, { noticeBefore: 24 * 3600 - 1 }, "101.27"],
  ["aviation-notice", { noticeBefore: 3 * 86_400 }, { noticeBefore: 3 * 86_400 + 1 }, "101.27"],
];

test("rules of 101.25 and 101.27 pass at their limits and stop past them", () => {
  expect(limits).toHaveLength(11);
  for (const [id, at, past, section] of limits) {
    expect(judged(id, at)?.verdict, id).toBe("pass");
    expect(judged(id, past)?.verdict, id).toBe("stop");
    expect(ruleById(id)?.source).toBe(`14 CFR ${section}`);
    expect(ruleById(id)?.status).toBe("verified");
  }
  // 5 nautical miles, as printed beside it
  expect(5 * 1852).toBe(9260);
});

test("rules of 101.25(d) to (f) ask to look where the authority has authorised it", () => {
  for (const change of [{ daylight: false }, { airportDistance: 1 }, { controlledAirspace: true }] as const) {
    const id = Object.keys({ ...change })[0]!;
    const rule = {
      daylight: "daylight",
      airportDistance: "airport-distance",
      controlledAirspace: "controlled-airspace",
    }[id];
    expect(judged(rule!, { ...change, authorised: true })).toMatchObject({ verdict: "look", details: ["authorised"] });
  }
});

test("rules of 101.25(g) together ask for the greater of 457 m and a quarter of the altitude", () => {
  const rows = [
    [1000, 457],
    [1828, 457],
    [2000, 500],
    [12_000 * foot, 3000 * foot],
  ] as const;
  expect(rows).toHaveLength(4);
  for (const [height95, least] of rows) {
    const at = (uninvolvedDistance: number) =>
      ["uninvolved-distance", "uninvolved-distance-for-height"].map(
        (id) => judged(id, { height95, uninvolvedDistance })!.verdict,
      );
    expect(at(least), `${height95} m`).toEqual(["pass", "pass"]);
    expect(at(least - 0.001), `${height95} m`).toContain("stop");
  }
});

test("aviationDuties() are 101.23 for class 1, 101.23 to 101.29(a) for class 2, 101.29(b) too for class 3", () => {
  const sections = (c: 1 | 2 | 3) => [...new Set(aviationDuties(c).map(({ section }) => section))];
  expect(sections(1)).toEqual(["101.23"]);
  const lettered = [..."abcdefghi"].map((letter) => `101.25(${letter})`);
  expect(sections(2)).toEqual(["101.23", ...lettered, "101.27", "101.29(a)"]);
  expect(sections(3)).toEqual([...sections(2), "101.29(b)"]);
  for (const { rule } of aviationDuties(3)) if (rule !== null) expect(ruleById(rule)?.id).toBe(rule);
  expect(aviationDuties(3).filter(({ status }) => status === "memory")).toHaveLength(1);
});

test("rules of 101.25 and 101.27 ask nothing of class 1", () => {
  const one = { propellantMass: 0.06, liftOffMass: 1, lightMaterials: true, totalImpulse: 100 };
  for (const { rule } of aviationDuties(2)) if (rule !== null) expect(judged(rule, one), rule).toBeNull();
});
