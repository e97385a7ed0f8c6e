import { expect, test } from "vitest";
import { shelfOf } from "./shelf-titles.js";

test.each([
  ["x.json", "rocket", "rockets"],
  ["demo-76.rocket.json", null, "rockets"],
  ["bag-3.motor-in-hand.json", null, "hands"],
  ["third.plan.json", null, null],
  ["x.json", "plan", null],
  ["me.flyer.json", "flyer", "flyers"],
  ["club.rule-set.json", null, "rules"],
  ["third.flight.json", "flight", "flights"],
  ["third.log.json", "log", "others"],
  ["torn.json", null, "others"],
] as const)("shelfOf() puts %s, read as %s, into %s", (path, kind, shelf) => {
  expect(shelfOf({ path, kind })).toBe(shelf);
});
