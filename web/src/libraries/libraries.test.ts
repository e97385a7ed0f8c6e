import { describe, expect, test } from "vitest";
import type { Entry } from "../store/index.js";
import { factsOf } from "./facts.js";
import { ownIssues, stateWords } from "./own-issues.js";
import { usersOf } from "./used-by.js";

const raw = (kind: string, more: object = {}) => ({ kind, version: 1, name: "X", ...more });
const entry = (path: string, document: object | null, more: object = {}) =>
  ({
    path,
    kind: (document as { kind?: string } | null)?.kind ?? null,
    raw: document,
    text: null,
    drafts: {},
    unreadable: null,
    ...more,
  }) as Entry;

describe("factsOf()", () => {
  const nameOf = (path: string) => (path === "h.motor.json" ? "Demo H150" : null);
  const delay = { kind: "adjustable", longest: "14 s" };
  test.each([
    [
      "rockets",
      raw("rocket", { diameter: "76 mm", length: "1.52 m", massWithoutMotor: "1.95 kg" }),
      "76 mm by 1.52 m, 1.95 kg without motor",
    ],
    ["rockets", raw("rocket"), ""],
    [
      "motors",
      raw("motor", { designation: "H150-14", diameter: "38 mm", delay }),
      "H150-14, 38 mm, delay 14 s, to be shortened",
    ],
    ["motors", raw("motor", { delay: { kind: "none" } }), "no delay"],
    [
      "hands",
      raw("motor-in-hand", { type: "h.motor.json", lot: "L-17", readings: [{ before: "22 mm", after: "24 mm" }] }),
      "Demo H150, lot L-17, cut, 1 reading",
    ],
    ["hands", raw("motor-in-hand", { type: raw("motor"), readings: [{ before: "22 mm" }] }), "X, measured, not cut"],
    [
      "tools",
      raw("tool", {
        ends: [
          { name: "A", removes: "6 s" },
          { name: "B", removes: "4 s" },
        ],
        spacers: [{}],
      }),
      "ends A takes 6 s and B takes 4 s, 1 spacer",
    ],
    ["tools", raw("tool", { stop: { to: "8 mm" } }), "depth stop, to 8 mm"],
    [
      "fields",
      raw("field", { elevation: "210 m", ceiling: { height: "900 m", above: "sea level" } }),
      "210 m above the sea, ceiling 900 m above the sea",
    ],
    ["fields", raw("field", { elevation: 3, ceiling: [] }), "3 above the sea"],
    ["flyers", raw("flyer", { certification: 0, age: 35 }), "level 0, 35 years"],
    [
      "rules",
      raw("rule-set", { source: "Field rules", edition: "2026", limits: { "wind-limit": "off", "tilt-limit": {} } }),
      "Field rules, 2026, 2 rules set",
    ],
    ["rules", raw("rule-set", { limits: [] }), ""],
  ] as const)("of %s, case %#", (shelf, document, words) => {
    expect(factsOf(shelf, document, nameOf)).toBe(words);
  });
});

describe("usersOf()", () => {
  test("finds plans that use a motor type by a motor in hand, and circles do no harm", () => {
    const entries = [
      entry("h.motor.json", raw("motor")),
      entry("bag.motor-in-hand.json", raw("motor-in-hand", { type: "h.motor.json" })),
      entry("one.plan.json", raw("plan", { motor: "bag.motor-in-hand.json" })),
      entry("two.plan.json", raw("plan", { rocket: raw("rocket", { readyWith: "h.motor.json" }) })),
      entry("three.plan.json", raw("plan", { motor: "other.motor.json" })),
      entry("torn.plan.json", null),
    ];
    const paths = (path: string) => usersOf(path, entries).map((each) => each.path);
    expect(paths("h.motor.json")).toEqual(["bag.motor-in-hand.json", "one.plan.json", "two.plan.json"]);
    expect(paths("one.plan.json")).toEqual([]);
    const circle = [entry("a.plan.json", raw("plan", { rocket: "a.plan.json" }))];
    expect(usersOf("a.plan.json", circle)).toEqual([]);
  });
});

describe("ownIssues() and stateWords()", () => {
  const field = raw("field", { elevation: "210 m" });

  test("look at what is typed, and at what cannot be read at all", () => {
    expect(ownIssues(entry("f.field.json", field))).toEqual([]);
    expect(ownIssues(entry("f.field.json", raw("field"))).map((issue) => `${issue.path} ${issue.code}`)).toEqual([
      "elevation missing",
    ]);
    const typed = ownIssues(entry("f.field.json", field, { drafts: { elevation: "21o m" } }));
    expect(typed.map((issue) => `${issue.file} ${issue.path} ${issue.code}`)).toEqual([
      "f.field.json elevation unit-unknown",
    ]);
    const torn = ownIssues(entry("torn.json", null, { text: '{ "kind": ', unreadable: "not-a-document" }));
    expect(torn[0]?.code).toBe("json-syntax");
    expect(ownIssues(entry("x.json", null, { text: "", unreadable: "newer-record" }))[0]?.code).toBe("newer-version");
  });

  test("count what is missing apart from what is wrong", () => {
    expect(stateWords([])).toBeNull();
    expect(stateWords([{ code: "missing" }])).toBe("1 thing is missing");
    expect(stateWords([{ code: "missing" }, { code: "unit-unknown" }])).toBe("2 things are wrong or missing");
  });
});
