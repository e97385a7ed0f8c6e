import "fake-indexeddb/auto";
import type { LearnedDocument, Raw } from "@delaywright/documents";
import { expect, test } from "vitest";
import { entryNow } from "../store/index.js";
import { store } from "../store/the-store.js";
import { isKept } from "./kept.js";
import { beginNextPlan, forgetLearned, reckonsWith, reckonWith } from "./reckon.js";

const learned: LearnedDocument = {
  rocket: "Demo",
  motor: "Demo H150",
  drag: { factor: 1.08, sd: 0.05 },
  impulse: { factor: 0.99, sd: 0.02 },
  correlation: 0.4,
  flights: { rocket: 1, motor: 1, both: 1 },
};
const nextTurn = () => new Promise((resolve) => setTimeout(resolve));

test("a plan reckons with what was learned once told to; undo, or taking it out, leaves it as it was", async () => {
  const path = store.add("plan", { kind: "plan", version: 1, name: "Third", rocket: "r.json", motor: "m.json" });
  const raw = (): Raw => entryNow(path)?.raw as Raw;
  const before = raw();
  await nextTurn();
  expect(reckonsWith(raw(), learned)).toBe("no");
  reckonWith(path, learned);
  await nextTurn();
  expect(raw()["learned"]).toMatchObject(learned);
  expect(reckonsWith(raw(), learned)).toBe("same");
  expect(reckonsWith(raw(), { ...learned, correlation: 0.5 })).toBe("other");
  store.undo();
  expect(raw()).toEqual(before);
  reckonWith(path, learned);
  forgetLearned(path);
  expect(raw()).toEqual(before);
});

test("beginNextPlan() takes a motor that is not spent, and no day and no choice of the last", async () => {
  const bag = store.add("motor-in-hand", { kind: "motor-in-hand", version: 1, name: "Bag 3", type: "demo.motor.json" });
  const raw = { kind: "plan", version: 1, name: "Fifth", date: "2026-05-02", motor: bag, choice: { delay: "9 s" } };
  const path = store.add("plan", raw as Raw);
  await nextTurn();
  const next = entryNow(beginNextPlan(path, learned));
  expect(next).toMatchObject({ kind: "plan", name: "Fifth, next" });
  expect(next?.raw).toMatchObject({ motor: "demo.motor.json", learned });
  for (const field of ["date", "choice"]) expect(next?.raw).not.toHaveProperty(field);
});

test("isKept() compares what was found with what the flight holds, to the last figure", () => {
  const told = { findings: { set: "9 s", apogee: "560 m", events: [{ name: "apogee", time: "11 s" }] } } as const;
  const flight = { kind: "flight", version: 1, plan: {}, findings: structuredClone(told.findings) };
  const kept = (raw: object) => isKept(raw as Raw, told as never);
  expect(kept(flight)).toBe(true);
  expect(kept({ ...flight, plan: "third.plan.json" })).toBe(false);
  expect(kept({ ...flight, findings: { ...told.findings, apogee: "561 m" } })).toBe(false);
  expect(kept({ ...flight, findings: undefined })).toBe(false);
});
