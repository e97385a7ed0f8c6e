import { expect, test } from "vitest";
import { motorClass } from "../../src/motor/motor-class.js";
import { ruleById } from "../../src/rules/all-rules.js";
import { clubIssues } from "../../src/rules/club.js";
import type { RuleFacts } from "../../src/rules/facts.js";
import { passing, passingModel } from "../high-power-safety-code/facts.js";

function judged(id: string, facts: RuleFacts) {
  const rule = ruleById(id);
  if (rule === undefined) throw new Error(`no rule ${id}`);
  return rule.judge(facts);
}

test("certification-level asks 1 of H and I, 2 of J to L, 3 of M to O", () => {
  const rows = [
    ["H", 1],
    ["I", 1],
    ["J", 2],
    ["K", 2],
    ["L", 2],
    ["M", 3],
    ["N", 3],
    ["O", 3],
  ] as const;
  expect(rows).toHaveLength(8);
  for (const [name, level] of rows) {
    expect(judged("certification-level", { ...passing, motorClass: name, certification: level })?.verdict).toBe("pass");
    expect(judged("certification-level", { ...passing, motorClass: name, certification: level - 1 })?.verdict).toBe(
      "stop",
    );
  }
});

test("certification-level by total impulse: 320 N s is level 1, 640.01 N s level 2", () => {
  const rows = [
    [160.01, 1],
    [320, 1],
    [505.75, 1],
    [640, 1],
    [640.01, 2],
    [40_960, 3],
  ] as const;
  expect(rows).toHaveLength(6);
  for (const [totalImpulse, level] of rows)
    expect(judged("certification-level", { ...passing, motorClass: motorClass(totalImpulse) })?.limit).toBe(level);
});

test("flyer-age asks 18 years for a G motor above 80 N s", () => {
  const g = { ...passingModel, motorClass: "G", totalImpulse: 80.01 };
  expect(judged("flyer-age", { ...g, age: 18 })?.verdict).toBe("pass");
  expect(judged("flyer-age", { ...g, age: 17.99 })?.verdict).toBe("stop");
  expect(ruleById("flyer-age")).toMatchObject({ source: "NFPA 1122, 4.9.2", edition: "2018", status: "verified" });
});

test("motor-certified stops a motor that is not", () => {
  expect(judged("motor-certified", { ...passing, motorCertified: false })?.verdict).toBe("stop");
  expect(ruleById("motor-certified")).toMatchObject({ edition: "August 2012, item 3", status: "verified" });
});

test("rules on cutting are no club's to change: the motor's own instructions decide", () => {
  const ids = ["instructions-not-confirmed", "tool-not-named", "removal-within-limit", "charge-in-well"];
  for (const id of ids)
    expect(clubIssues({ name: "Demo club", limits: { [id]: "off" } })[0]?.code).toBe("rule-is-fixed");
});
