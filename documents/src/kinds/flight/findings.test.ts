import { eventNames } from "@delaywright/engine";
import { expect, test } from "vitest";
import { readValue } from "../../read.js";

const flight = (more: object) => ({ kind: "flight", version: 1, name: "Third flight", plan: "plan.json", ...more });
const issues = (value: unknown) => readValue(value, { file: "" }).issues.map(({ path, code }) => `${path} ${code}`);

const findings = {
  set: "10 s",
  delay: "10.4 s",
  delayError: "0.12 s",
  delayIs: "seen",
  openedBy: "motor",
  openedAt: "12.1 s",
  coast: "9.8 s",
  apogee: "640 m",
  outcome: "clean",
  events: eventNames.map((name, k) => ({
    name,
    time: `${k} s`,
    timeError: "0.05 s",
    height: "212 m",
    heightError: "1 m",
    reason: "speed-highest",
    ...(name === "opening" ? { movedFrom: "3.6 s" } : {}),
  })),
  drag: { factor: 1.08, sd: 0.05 },
  impulse: { factor: 0.98, sd: 0.02 },
  scalesCorrelation: 0.6,
  residual: "1.2 m",
};

test("a flight holds all that was found, what was foretold, and why nothing is learned from it", () => {
  const whole = flight({
    logFlight: 2,
    findings,
    forecast: { clean: 0.93, apogee: { from: "600 m", to: "690 m" } },
    excluded: { reason: "the fins came off", when: "2026-05-02T12:00" },
  });
  expect(issues(whole)).toEqual([]);
});

test("a flight that is left out says why", () => {
  expect(issues(flight({ excluded: {} }))).toEqual(["excluded.reason missing"]);
  expect(issues(flight({ excluded: { reason: " " } }))).toHaveLength(1);
});

test("findings name each event once, and nothing without what it belongs to", () => {
  const [first] = findings.events;
  const broken = { events: [first, first], drag: findings.drag, scalesCorrelation: 0.6, delayIs: "at-least" };
  expect(issues(flight({ findings: broken, forecast: { clean: 0.5, apogee: { from: "9 m", to: "8 m" } } }))).toEqual([
    "findings.events[1].name event-twice",
    "findings.scalesCorrelation not-together",
    "findings.delay missing",
    "forecast.apogee.to out-of-range",
  ]);
});
