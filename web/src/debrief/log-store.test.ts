import "fake-indexeddb/auto";
import { readValue } from "@delaywright/documents";
import { describe, expect, test } from "vitest";
import { changeDocuments, entryNow } from "../store/index.js";
import { store } from "../store/the-store.js";
import { flightWords } from "./flight-words.js";
import { dropLog, flightFor, keepLog, logOf, rememberedFor } from "./log-store.js";

const plan = { kind: "plan", version: 1, name: "Third flight", rocket: "r.rocket.json", motor: "m.motor.json" };
const mapping = { time: { column: "Time (s)", unit: "s" }, height: { column: "Height (ft)", unit: "ft" } };
const log = { name: "first", source: "first-0123.csv", mapping, headings: "time (s) | height (ft)", number: 2 };
const nextTurn = () => new Promise((resolve) => setTimeout(resolve));

async function flown(): Promise<string> {
  const path = store.add("plan", plan);
  const flight = flightFor(path, null);
  expect(flightFor(path, flight)).toBe(flight);
  await nextTurn();
  return flight;
}

describe("keepLog()", () => {
  test("gives a flight its log in one step, readable, and undo takes both away", async () => {
    const flight = await flown();
    changeDocuments("said", [
      { path: flight, raw: { ...entryNow(flight)?.raw, findings: { set: "9 s", apogee: "1 m" } } as never },
    ]);
    await nextTurn();
    const logs = store.memory.list("log").length;
    keepLog(flight, log);
    await nextTurn();
    const raw = entryNow(flight)?.raw;
    expect(raw).toMatchObject({ logFlight: 2, findings: { set: "9 s" } });
    expect(raw?.["findings"]).toEqual({ set: "9 s" });
    const entries = store.memory.list();
    expect(raw && logOf(raw, entries)).toEqual({ source: log.source, mapping, name: "first" });
    const kept = entries.find(({ path }) => path === raw?.["log"]);
    expect(kept?.raw && readValue(kept.raw, { file: "" }).issues).toEqual([]);
    expect(raw && readValue(raw, { file: "" }).issues).toEqual([]);
    expect(store.undo().ok).toBe(true);
    expect(store.memory.list("log")).toHaveLength(logs);
    expect(entryNow(flight)?.raw?.["log"]).toBeUndefined();
  });

  test("a log is remembered by its headings, the newest first, and forgotten with its flight", async () => {
    const flight = await flown();
    keepLog(flight, log);
    await nextTurn();
    const logs = store.memory.list("log");
    expect(rememberedFor(log.headings, logs)).toEqual({ name: logs[0]?.name, mapping });
    expect(rememberedFor("others", logs)).toBeNull();
    expect(rememberedFor("", [...logs, { name: "bare", savedAt: 1, raw: { headings: "" } as never }])).toBeNull();
    const newer = { ...mapping, height: { column: 2, unit: "m" } };
    const raw = { kind: "log", version: 1, name: "x", headings: log.headings, columns: newer };
    const both = [...logs, { name: "newer", savedAt: Number.MAX_SAFE_INTEGER, raw }];
    expect(rememberedFor(log.headings, both)?.name).toBe("newer");
    const path = entryNow(flight)?.raw?.["log"];
    dropLog(flight, store.memory.list("flight"));
    expect(entryNow(String(path))).toBeUndefined();
    expect(entryNow(flight)?.raw).not.toHaveProperty("log");
  });

  test("a log that another flight has too stays", async () => {
    const [one, other] = [await flown(), await flown()];
    keepLog(one, log);
    const path = String(entryNow(one)?.raw?.["log"]);
    changeDocuments("shared", [{ path: other, raw: { ...entryNow(other)?.raw, log: path } as never }]);
    dropLog(one, store.memory.list("flight"));
    expect(entryNow(path)).toBeDefined();
  });
});

test("logOf() finds a log inside its flight, and none where there is none", () => {
  const inside = { kind: "log", version: 1, name: "In", source: "a.csv", columns: mapping };
  const flight = (value: unknown) => ({ kind: "flight", version: 1, name: "", log: value }) as never;
  expect(logOf(flight(inside), [])).toEqual({ source: "a.csv", mapping, name: "In" });
  for (const value of [undefined, "gone.log.json", 3, { source: "a.csv" }]) expect(logOf(flight(value), [])).toBeNull();
});

test("flightWords() says when it flew and how it went", () => {
  const words = (more: object) => flightWords({ kind: "flight", version: 1, name: "", ...more } as never, "Third");
  expect(words({})).toBe("Third, not debriefed yet");
  expect(words({ flown: "2026-05-02T10:40", findings: { outcome: "fast", apogee: "560 m" } })).toMatch(
    /^Third, 2026-05-02, opened too fast, top 560 m$/,
  );
  expect(words({ excluded: { reason: "x" }, findings: { outcome: "clean" } })).toBe("Third, left out");
});
