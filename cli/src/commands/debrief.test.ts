import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { demoFiles, few, type Loose, runOver } from "../../test/demo.js";

const logs = fileURLToPath(new URL("../../examples/debrief/", import.meta.url));
const csv = (name: string): string => readFileSync(`${logs}${name}`, "utf8");
const first = csv("first-flight.csv");

/** The demo's plan with the delay that flew, and logs beside it. */
const flown = (more: Readonly<Record<string, string | Uint8Array>> = {}) => ({
  ...demoFiles({
    "plan.json": (plan) => {
      plan.choice = { delay: "9 s", reason: "it flew" };
    },
  }),
  "first.csv": first,
  ...more,
});

/** Runs `debrief plan.json` with few draws. */
const debrief = (words: readonly string[], files: Readonly<Record<string, string | Uint8Array>> = flown()) =>
  runOver(files, ["debrief", "plan.json", ...words, ...few]);

/** A flight document as `-o` writes it. */
async function writtenFlight(words: readonly string[] = []): Promise<string> {
  const { files, code, err } = await debrief(["first.csv", "--set", "9s", "-o", "flights/first.json", ...words]);
  if (code !== 0) throw new Error(err);
  return files["flights/first.json"] ?? "";
}

describe("delaywright debrief", () => {
  test("says what happened first, then what it means, what was learned and what it changes", async () => {
    const { out, err, code } = await debrief(["first.csv", "--set", "9s"]);
    expect({ err, code }).toEqual({ err: "", code: 0 });
    expect(out.split("\n")[0]).toMatch(
      /^Set to 9 s, burnt 9\.\d s ± 0\.\d s; top 58\d m; opened \d\.\d s after the top/,
    );
    const heads = [
      "What happened",
      "What the differences mean",
      "What was learned",
      "What it changes",
      "How it was read",
    ];
    const places = heads.map((head) => out.indexOf(`\n${head}\n`));
    expect(places.every((place, i) => place > (places[i - 1] ?? 0))).toBe(true);
    expect(out).toContain("more drag or less impulse than reckoned");
    expect(out).toContain("One flight proves little");
    expect(out).not.toMatch(/NaN|undefined|Infinity|null/);
    for (const line of out.split("\n")) expect(line.length, line).toBeLessThanOrEqual(100);
  });

  test.each([
    ["second-flight.csv", 9.9],
    ["third-flight.csv", 9.4],
  ])("reads %s without a mapping, and finds the delay that was put into it", async (name, delay) => {
    const { json, code } = await debrief(["log.csv", "--set", "9s", "--json"], flown({ "log.csv": csv(name) }));
    expect(code).toBe(0);
    const seen = json().delay.flown;
    expect(Math.abs(seen.delay - delay)).toBeLessThan(3 * seen.error + 0.02);
    // 1.09 was put in: scripts/demo-logs.mjs
    const { drag } = json().climb;
    expect(Math.abs(Math.log(drag.factor / 1.09))).toBeLessThan(3 * drag.sd);
  });

  test("writes a flight that stands alone, and teaches the next one the same without the plan's files or the log", async () => {
    const document = await writtenFlight();
    const checked = await runOver({ "flights/first.json": document }, ["check", "flights/first.json"]);
    expect(checked.code).toBe(0);
    expect(JSON.parse(document)).toMatchObject({
      kind: "flight",
      name: "first",
      plan: { kind: "plan", rocket: { kind: "rocket" } },
      log: { source: "../first.csv", columns: { time: {}, height: { unit: "ft" } } },
      logFlight: 1,
      findings: { set: "9 s", outcome: "clean", outcomeBy: "record" },
    });
    const second = { "second.csv": csv("second-flight.csv"), "flights/first.json": document };
    const { json } = await debrief(["second.csv", "--set", "9s", "--flights", "flights", "--json"], flown(second));
    const { learned, past } = json();
    expect(learned.before.flights).toEqual({ rocket: 1, motor: 1, both: 1 });
    expect(learned.after.flights).toEqual({ rocket: 2, motor: 2, both: 2 });
    expect(learned.after.drag.sd).toBeLessThan(learned.before.drag.sd);
    expect(past.map(({ name, isThis }: Loose) => [name, isThis])).toEqual([
      ["first", false],
      ["second", true],
    ]);
  });

  test("counts a flight once, though its document lies among the others", async () => {
    const files = flown({ "flights/first.json": await writtenFlight() });
    for (const log of ["first.csv", "flights/first.json"]) {
      const { json } = await debrief([log, "--flights", "flights", "--json"], files);
      expect(json().learned.after.flights, log).toEqual({ rocket: 1, motor: 1, both: 1 });
    }
  });

  test("debriefs a flight's document: with its record, and by its findings where that is gone", async () => {
    const files = flown({ "flights/first.json": await writtenFlight() });
    const withRecord = await debrief(["flights/first.json", "--json"], files);
    const { "first.csv": _, ...without } = files;
    const byFindings = await debrief(["flights/first.json", "--json"], without);
    expect(byFindings.code).toBe(0);
    expect(byFindings.json()).toMatchObject({
      notes: ["findings-only"],
      record: null,
      issues: [{ file: "first.csv", code: "file-missing" }],
    });
    const factor = (made: typeof withRecord): number => made.json().learned.after.drag.factor;
    expect(factor(byFindings)).toBeCloseTo(factor(withRecord), 5);
  });

  test("takes a log's document, and a mapping that was typed once is remembered by its headings", async () => {
    const odd = first.replace("Time (s),Height (ft)", "a,b");
    const files = flown({ "odd.csv": odd });
    const typed = ["--column", "time=1:s", "--column", "height=b:ft"];
    const { files: written, code } = await debrief(
      ["odd.csv", "--set", "9s", "-o", "flights/odd.json", ...typed],
      files,
    );
    expect(code).toBe(0);
    const again = flown({ "other.csv": odd, "flights/odd.json": written["flights/odd.json"] ?? "" });
    const remembered = await debrief(["other.csv", "--set", "9s", "--flights", "flights", "--json"], again);
    const plain = await debrief(["first.csv", "--set", "9s", "--json"]);
    expect(remembered.json().top.height).toBeCloseTo(plain.json().top.height, 6);
    const log = {
      kind: "log",
      version: 1,
      name: "Odd",
      source: "odd.csv",
      columns: { time: { column: 1, unit: "s" }, height: { column: 2, unit: "ft" } },
    };
    const byLog = await debrief(["odd.log.json", "--set", "9s", "--json"], {
      ...files,
      "odd.log.json": JSON.stringify(log),
    });
    expect(byLog.json().top.height).toBeCloseTo(plain.json().top.height, 6);
  });

  test("learns nothing from a flight that is left out, keeps the reason, and says so", async () => {
    const { out, files, code } = await debrief([
      "first.csv",
      "--set",
      "9s",
      "--exclude",
      "other nose",
      "-o",
      "flights/first.json",
    ]);
    expect(code).toBe(0);
    expect(out).toContain("Nothing is learned from it, since you left it out.");
    expect(out).toContain("as without this flight");
    expect(JSON.parse(files["flights/first.json"] ?? "")).toMatchObject({
      excluded: { reason: "other nose", when: "2026-05-02T11:05" },
    });
  });

  test("a broken file among the flights is told, and stops none", async () => {
    const files = flown({
      "flights/first.json": await writtenFlight(),
      "flights/broken.json": '{ "kind": "flight", ',
      "flights/wrong.json": JSON.stringify({ kind: "flight", version: 1, name: "Wrong", plan: "gone.json", flown: 3 }),
      "flights/rocket.json": demoFiles()["demo.rocket.json"] ?? "",
    });
    const { json, code } = await debrief(["first.csv", "--set", "9s", "--flights", "flights", "--json"], files);
    expect(code).toBe(0);
    expect(new Set(json().issues.map(({ file }: Loose) => file))).toEqual(
      new Set(["flights/broken.json", "flights/wrong.json"]),
    );
    const { out } = await debrief(["first.csv", "--set", "9s", "--flights", "flights"], files);
    expect(out).toContain("\nNot read\n  flights/broken.json");
  });
});

describe("delaywright debrief refuses", () => {
  const rows = (cell: (i: number) => string): string =>
    `time (s),height (m)\n${Array.from({ length: 400 }, (_, i) => cell(i)).join("\n")}\n`;
  test.each<[string, string | Uint8Array, RegExp]>([
    ["nothing", "", /empty/],
    ["bytes that are no text", Uint8Array.from({ length: 5000 }, (_, i) => (i * 37) % 64), /no text/],
    ["one column", "height\n1\n2\n3\n4\n5\n", /one column only/],
    ["figures all equal", rows((i) => `${i / 20},3`), /same figure in every row/],
    ["a time that stands", rows((i) => `1,${i}`), /[Tt]ime|column/],
    ["a time that runs back", rows((i) => `${400 - i},${i}`), /backwards|No column of the time/],
    ["NaN in every cell", rows(() => "NaN,NaN"), /no rows of figures|no figures|No column/],
    ["figures beyond all bounds", rows((i) => `${i / 20},1e308`), /./],
    ["words", rows(() => "up,down"), /./],
  ])("%s: a clear word, exit code 2, no defect", async (_, text, word) => {
    const { err, out, code } = await debrief(["log.csv"], flown({ "log.csv": text }));
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/^log\.csv: /);
    expect(err).toMatch(word);
    expect(err).not.toMatch(/defect|undefined|NaN found/);
  });

  test("a record that is not there, a flight that is not in it, and a folder without flights", async () => {
    expect(await debrief(["gone.csv"])).toMatchObject({ code: 2, err: expect.stringContaining("gone.csv") });
    const { err } = await debrief(["first.csv", "--flight", "2"]);
    expect(err).toContain("1: the record holds one flight");
    expect((await debrief(["first.csv", "--flights", "nowhere"])).err).toContain("--flights: no flight found");
  });

  test.each([
    [["--set", "soon"], "--set"],
    [["--set", "20s"], '--set: "20 s" found; no more than the longest delay is accepted, 14 s, for example --set 14s'],
    [["--flight", "0"], "--flight"],
    [["--column", "height"], "--column"],
    [["--column", "wingspan=3"], "--column"],
    [["--column", "height=-3:m"], "--column"],
    [["--column", "height=2:parsec"], "parsec"],
    [["--outcome", "superb"], "--outcome"],
    [["--exclude", " "], "--exclude"],
  ])("%j with what is accepted", async (words, named) => {
    const { err, code } = await debrief(["first.csv", ...words]);
    expect(code).toBe(2);
    expect(err).toContain(named);
  });

  test.each([
    ["the record itself", "first.csv", "first.csv"],
    ["a log's document", "log.json", "log.json"],
    ["the record of a log's document", "log.json", "first.csv"],
    ["the plan", "first.csv", "plan.json"],
  ])("to write over %s", async (_, log, output) => {
    const { columns } = JSON.parse(await writtenFlight()).log;
    const document = { kind: "log", version: 1, name: "First", source: "first.csv", columns };
    const files = flown({ "log.json": JSON.stringify(document) });
    const { err, code, files: written } = await debrief([log, "--set", "9s", "-o", output], files);
    expect({ code, written }).toEqual({ code: 2, written: {} });
    expect(err).toContain(`${output} is already there, and is not written over`);
  });

  test("to write over a flight that is already there", async () => {
    const files = flown({ "flights/first.json": await writtenFlight() });
    const {
      err,
      code,
      files: written,
    } = await debrief(["first.csv", "--set", "9s", "-o", "flights/first.json"], files);
    expect({ code, written }).toEqual({ code: 2, written: {} });
    expect(err).toContain("is already there");
    const again = await debrief(["flights/first.json", "-o", "flights/first.json"], files);
    expect(again.code).toBe(0);
    const spelt = await debrief(["flights/first.json", "-o", "./flights/../flights/first.json"], files);
    expect(spelt.code).toBe(0);
    expect(JSON.parse(again.files["flights/first.json"] ?? "").log.source).toBe("../first.csv");
  });
});

describe("delaywright decide --flights", () => {
  test("learns from the folder and says on what it rests", async () => {
    const files = flown({ "flights/first.json": await writtenFlight() });
    const plain = await runOver(files, ["decide", "plan.json", "--json", ...few]);
    const taught = await runOver(files, ["decide", "plan.json", "--flights", "flights", "--json", ...few]);
    expect(plain.json().learned).toBeNull();
    expect(taught.json().learned).toMatchObject({
      flights: { rocket: 1, motor: 1, both: 1 },
      delays: { seen: 1, bounds: 0 },
    });
    const width = ({ p05, p95 }: Loose): number => p95 - p05;
    expect(width(taught.json().apogeeHeight)).toBeLessThan(width(plain.json().apogeeHeight));
    const { out } = await runOver(files, ["decide", "plan.json", "--flights", "flights", ...few]);
    expect(out.replace(/\s+/g, " ")).toMatch(
      /On what that rests: 1 delay of this motor type seen, 0\.\d s one sigma; drag [\d.]+ % more than reckoned, ± [\d.]+ %, from 1 flight of this rocket\./,
    );
  });

  test("gives the same odds to the last digit as the debrief foretold", async () => {
    const files = flown();
    const told = await debrief(["first.csv", "--set", "9s", "--json"], files);
    const decided = await runOver(flown({ "flights/first.json": await writtenFlight() }), [
      "decide",
      "plan.json",
      "--flights",
      "flights",
      "--json",
      ...few,
    ]);
    const { delay, odds } = told.json().next.after.toCut;
    const setting = decided.json().settings.find((each: Loose) => each.delay === delay);
    // six digits of what was learned are written down
    expect(setting.odds.clean).toBeCloseTo(odds.clean, 4);
    expect(decided.json().toCut.delay).toBe(delay);
  });
});
