import { describe, expect, test } from "vitest";
import { addressOf, type Route, routeOf } from "./router.js";

const places: readonly Exclude<Route, { page: "unknown" }>[] = [
  { page: "bench" },
  { page: "import" },
  { page: "plan", path: "third flight 50%/#1.plan.json" },
  { page: "pad", path: "demo.plan.json" },
  { page: "card-desk" },
  { page: "label", path: "bag-3.motor-in-hand.json" },
  { page: "shortlist", path: "demo.plan.json" },
  { page: "shelf", shelf: "hands" },
  { page: "document", shelf: "rockets", path: "möwe.rocket.json" },
];

describe("routeOf() and addressOf()", () => {
  test.each(places)("$page comes back from its address", (place) => {
    expect(routeOf(addressOf(place))).toEqual(place);
  });

  test.each(["#/plan", "#/nowhere/x", "#/plan/a/b", "#/%E0%A4%A", "#/rocket"])("%s leads nowhere", (address) => {
    expect(routeOf(address).page).toBe("unknown");
  });

  test("an empty address is the bench", () => {
    expect(["", "#", "#/"].map((address) => routeOf(address).page)).toEqual(["bench", "bench", "bench"]);
  });
});
