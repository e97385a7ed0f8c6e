import type { Raw } from "@delaywright/documents";
import { describe, expect, test } from "vitest";
import type { Entry } from "../store/index.js";
import { movedTo, plansFor, surroundingsOf, surroundingsWords } from "./surroundings.js";

const field: Raw = { kind: "field", version: 1, name: "Demo field", elevation: "120 m" };
const plan = (more: object): Raw => ({ kind: "plan", version: 1, name: "P", ...more });
const entries = [{ path: "demo.field.json", raw: field }];

describe("surroundingsOf()", () => {
  const weather = { wind: "3 m/s", taken: "10:40" };

  test("finds the field in the library or inside the plan, and the weather", () => {
    expect(surroundingsOf(plan({ field: "demo.field.json", weather }), entries)).toEqual({ field, weather });
    expect(surroundingsOf(plan({ field }), [])).toEqual({ field });
    expect(surroundingsOf(plan({ field: "gone.field.json" }), entries)).toEqual({});
  });

  test("are said in a line", () => {
    expect(surroundingsWords({ field, weather }, "metric")).toBe("Demo field, wind 3 m/s, read 10:40");
    expect(surroundingsWords({ field, weather }, "imperial")).toBe("Demo field, wind 7\u00a0mph, read 10:40");
    expect(surroundingsWords({ weather: { aloft: [] } }, "metric")).toBe("no field, winds aloft");
    expect(surroundingsWords({}, "metric")).toBe("no field, no wind given");
  });

  test("take the place of those that a plan came with", () => {
    const came = plan({ field: { name: "Far" }, weather: { wind: "9 m/s" }, weatherRange: { wind: [] }, rocket: 1 });
    expect(movedTo(came, { field, weather })).toEqual(plan({ rocket: 1, field, weather }));
    expect(movedTo(came, {})).toEqual(plan({ rocket: 1 }));
  });
});

test("plansFor() has today's plans first, then what was changed last", () => {
  const entry = (path: string, date: string, savedAt: number) =>
    ({ path, kind: "plan", raw: plan({ date }), savedAt }) as Entry;
  const list = [
    entry("old", "2026-05-01", 3),
    entry("today", "2026-05-02", 1),
    entry("newer", "2026-05-03", 4),
    { path: "r", kind: "rocket", raw: field, savedAt: 9 } as Entry,
  ];
  expect(plansFor(list, "2026-05-02").map(({ path }) => path)).toEqual(["today", "newer", "old"]);
});
