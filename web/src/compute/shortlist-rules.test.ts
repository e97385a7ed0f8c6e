import type { JudgedMotor } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import type { FromDesk } from "./protocol.js";
import { shortlistRules } from "./shortlist-rules.js";
import type { ShortlistAnswer, ShortlistShelf } from "./told.js";

const shelf = (...motors: string[]): FromDesk => ({
  kind: "shelf",
  job: 1,
  shelf: { motors, names: new Map(), unread: [] } as unknown as ShortlistShelf,
});
const rows = (price: number, ...ids: string[]): FromDesk => ({
  kind: "rows",
  job: 1,
  rows: ids.map((id) => ({ id, price, outcome: "ranked" }) as JudgedMotor),
});
const read = (right: boolean): FromDesk => ({ kind: "read", job: 1, issues: [], files: [], right });
const done: FromDesk = { kind: "done", job: 1 };
const after = (answer: ShortlistAnswer, ...messages: FromDesk[]) =>
  messages.reduce((now, message) => shortlistRules.after(now, message), answer);
const judged = after(shortlistRules.first, read(true), shelf("a", "b"), rows(1, "a", "b"), done);

describe("shortlistRules", () => {
  test("rows come in, and are ready once all have", () => {
    const half = after(shortlistRules.first, read(true), shelf("a", "b"), rows(1, "b"));
    expect({ ...half, rows: [...half.rows.keys()], waiting: [...half.waiting] }).toMatchObject({
      state: "waiting",
      rows: ["b"],
      waiting: ["a"],
    });
    expect(judged.state).toBe("ready");
    expect(judged.waiting.size).toBe(0);
  });

  test("rows of before stay in their place, marked, until they are judged anew; those of motors that are gone go", () => {
    const asked = shortlistRules.asked(judged);
    expect([...asked.rows.keys()]).toEqual(["a", "b"]);
    expect(asked.waiting).toEqual(new Set(["a", "b"]));
    const later = after(asked, read(true), shelf("b", "c"), rows(2, "b"));
    expect([...later.rows].map(([id, { price }]) => [id, price])).toEqual([["b", 2]]);
    expect(later.waiting).toEqual(new Set(["c"]));
  });

  test("a plan that is wrong stays wrong when its job is over, and keeps what was judged", () => {
    const wrong = after(shortlistRules.asked(judged), read(false), done);
    expect(wrong.state).toBe("wrong");
    expect(wrong.rows.size).toBe(2);
  });

  test("a defect is said in words", () => {
    expect(after(judged, { kind: "failed", job: 1, reason: "odd" })).toMatchObject({ state: "failed" });
    expect(after(judged, { kind: "failed", job: 1, reason: "odd" }).failure).toContain("odd");
  });
});
