import { expect, test } from "vitest";
import { rules } from "../rules/all-rules.js";
import type { FactName, RuleFacts } from "../rules/facts.js";
import { stopBetween, weatherRules, weatherStop } from "./weather-stop.js";

const facts: RuleFacts = { highPower: true, guideExitSpeed: 30, tilt: 0 };
const inWind = (wind: number, more: RuleFacts = {}) => ({ wind, facts: { ...facts, windSpeed: wind, ...more } });

test("weatherRules holds every rule that asks for the wind, the lean, or where it lands", () => {
  const asked: readonly FactName[] = [
    "windSpeed",
    "tilt",
    "toward",
    "openingSpeed90",
    "outsideOpened",
    "outsideUnopened",
    "keepOffOpened",
    "keepOffUnopened",
    "drawsNotFlown",
    "ceiling",
    "cloudBase",
  ];
  const titles = rules.filter(({ needs }) => needs.some((need) => asked.includes(need))).map(({ title }) => title);
  expect(new Set(titles)).toEqual(weatherRules);
});

test("weatherStop() looks at what the weather changes, not at what the flyer may do", () => {
  expect(weatherStop({ ...facts, windSpeed: 9 }, undefined)?.id).toBe("wind-limit");
  expect(weatherStop({ ...facts, windSpeed: 8 }, undefined)).toBeNull();
  expect(
    weatherStop({ ...facts, windSpeed: 8, thrustToWeight: 1, certification: 0, motorClass: "K" }, "none"),
  ).toBeNull();
});

test("stopBetween() finds the safety code's 20 mph, an exit speed of three winds, and half the landings outside", () => {
  // 20 mph: High Power Rocket Safety Code, wind; 1 mph is 0.44704 m/s by definition
  expect(stopBetween(inWind(8), inWind(9), undefined)).toMatchObject({
    wind: expect.closeTo(20 * 0.44704, 2),
    check: { id: "wind-limit", verdict: "stop" },
  });
  // three times the wind: common practice, no source
  const slow = { guideExitSpeed: 16.5 };
  const against = stopBetween(inWind(5, slow), inWind(6, slow), "none");
  expect(against.check.id).toBe("guide-exit-against-wind");
  expect(against.wind).toBeCloseTo(5.5, 2);
  const drifting = stopBetween(inWind(2, { outsideOpened: 0.4 }), inWind(4, { outsideOpened: 0.8 }), undefined);
  expect(drifting.check.id).toBe("landing-inside");
  expect(drifting.wind).toBeCloseTo(2.5, 2);
});

test("stopBetween() never gives a wind in which the rule already says stop", () => {
  const club = { name: "Club", limits: { "wind-limit": { stop: 3 } } };
  const { wind, check } = stopBetween(inWind(0), inWind(7), club);
  expect(wind).toBeLessThanOrEqual(3);
  expect(wind).toBeCloseTo(3, 1);
  expect(check.status).toBe("the club's own");
});
