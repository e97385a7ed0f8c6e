import { expect, test } from "vitest";
import type { Entry } from "../store/index.js";
import { documentsOf, fieldWithin, keptDocuments } from "./plan-documents.js";

const entry = (path: string, raw: Readonly<Record<string, unknown>> | null) =>
  ({ path, raw, kind: raw?.["kind"] ?? null, name: String(raw?.["name"] ?? path) }) as unknown as Entry;

test("documentsOf() finds documents in the library and inside the plan", () => {
  const motor = { kind: "motor-in-hand", name: "Bag 3", type: "m.motor.json" };
  const others = { flyer: { kind: "flyer", name: "Me" }, ruleSet: "c.rule-set.json" };
  const entries = [
    entry("p.plan.json", { kind: "plan", rocket: "r.rocket.json", motor, field: "gone.json", ...others }),
    entry("r.rocket.json", { kind: "rocket", name: "Demo rocket 76" }),
    entry("m.motor.json", { kind: "motor", name: "Demo H150" }),
    entry("c.rule-set.json", { kind: "rule-set", name: "Club" }),
  ];
  const found = documentsOf("p.plan.json", entries);
  expect(found).toMatchObject({
    rocket: { path: "r.rocket.json", within: "", name: "Demo rocket 76" },
    motor: { path: "m.motor.json", within: "", name: "Demo H150" },
    inHand: { path: "p.plan.json", within: "motor", name: "Bag 3" },
    tool: null,
    field: null,
    flyer: { path: "p.plan.json", within: "flyer", name: "Me" },
    ruleSet: { path: "c.rule-set.json", within: "", name: "Club" },
  });
  const silent = [entry("p.plan.json", { kind: "plan", ruleSet: "association" })];
  expect(documentsOf("p.plan.json", silent)?.ruleSet).toBeNull();
  expect(fieldWithin({ within: "motor" }, "lot")).toBe("motor.lot");
});

test("documentsOf() is null for what is no plan, is not there, or cannot be read", () => {
  const entries = [entry("r.rocket.json", { kind: "rocket" }), entry("torn.plan.json", null)];
  for (const path of ["r.rocket.json", "torn.plan.json", "gone.plan.json"])
    expect(documentsOf(path, entries)).toBeNull();
});

test("keptDocuments() stays the same for what the plan does not refer to, and not for what it does", () => {
  const plan = entry("p.plan.json", { kind: "plan", rocket: "r.rocket.json", flyer: { kind: "flyer", name: "Me" } });
  const rocket = entry("r.rocket.json", { kind: "rocket", name: "Demo rocket 76" });
  const flight = (name: string) => entry("f.flight.json", { kind: "flight", name, plan: "p.plan.json" });
  const before = documentsOf("p.plan.json", [plan, rocket, flight("First")]);
  const logged = documentsOf("p.plan.json", [plan, rocket, flight("Second"), entry("l.log.json", { kind: "log" })]);
  expect(keptDocuments(before, logged)).toBe(before);
  const painted = documentsOf("p.plan.json", [plan, entry("r.rocket.json", { ...rocket.raw, mass: "2 kg" })]);
  expect(keptDocuments(before, painted)).toBe(painted);
  const renamed = documentsOf("p.plan.json", [{ ...plan }, rocket]);
  expect(keptDocuments(before, renamed)).toBe(renamed);
  expect(keptDocuments(before, documentsOf("p.plan.json", [plan]))?.rocket).toBeNull();
  expect([keptDocuments(before, null), keptDocuments(null, before)]).toEqual([null, before]);
});
