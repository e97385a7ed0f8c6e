import { describe, expect, test } from "vitest";
import { demoFiles, few, inHand, runOver } from "../../test/demo.js";
import type { Files } from "../io/io.js";
import { memoryIo } from "../io/memory.js";

const demo = ["card", "plan.json", ...few];

const there = {
  ...demoFiles(),
  "other.json": demoFiles()["plan.json"] ?? "",
  "log.csv": "time,height\n0,0\n",
  "page.html": '<!doctype html>\n<html lang="en">\n<title>Flight card: mine</title></html>',
  "code.txt": "DELAYWRIGHT1:BB8:",
};
const accepted = (words: readonly string[]): string =>
  words.includes("--read") ? "a new name is accepted" : "a new name is accepted, or an earlier card's";

describe("card", () => {
  test("is one page that needs nothing else", async () => {
    const { out, err, code } = await runOver(demoFiles(), demo);
    expect(out.startsWith("<!doctype html>")).toBe(true);
    expect(out).not.toMatch(/https?:|<script|<link|<img|<iframe|@import|url\(|src=|href=|javascript:/i);
    expect([err, code]).toEqual(["", 0]);
  });

  test("has the parts that a range officer looks for, in their order", async () => {
    const { out } = await runOver(inHand("24.6 mm"), demo);
    const text = out.replace(/<style>[\s\S]*<\/style>/, "").replace(/<[^>]+>/g, "\n");
    const parts = [
      "Flight card",
      "computed 2026-05-02 11:05",
      "Demo rocket 76",
      "lift-off mass 2.28",
      "margin",
      "Demo H150",
      "Bag 3, no. 3",
      "thrust to weight",
      "As cut",
      "11.0",
      "Suggested",
      "Height",
      "95",
      "Opens by",
      "Recovery",
      "If nothing opens",
      "Checks that do not pass",
      "Not checked",
      "igniter",
      "late charge",
      "Flyer, signature",
      "Range safety officer, signature",
      "seed 1",
      "the range safety officer and local law decide",
    ];
    let at = -1;
    for (const part of parts) {
      const next = text.indexOf(part, at + 1);
      expect(next, `${part} after ${text.slice(Math.max(0, at), at + 30)}`).toBeGreaterThan(at);
      at = next;
    }
  });

  test("-o writes the page, --paper and --units change it", async () => {
    const { out, err, files } = await runOver(demoFiles(), [
      ...demo,
      "-o",
      "card.html",
      "--paper",
      "Letter",
      "--units",
      "imperial",
    ]);
    expect([out, err]).toEqual(["", "card.html written.\n"]);
    expect(files["card.html"]).toContain("@page{size:215.9mm 279.4mm");
    expect(files["card.html"]).toContain("lift-off mass 5.0");
    const a5 = (await runOver(demoFiles(), demo)).out;
    expect(a5).toContain("@page{size:148mm 210mm");
  });

  test.each([
    ["its own plan", ["plan.json"]],
    ["a document that it read", ["demo.rocket.json"]],
    ["another file", ["log.csv"]],
    ["a page of another kind", ["page.html"]],
    ["the code that it reads", ["code.txt", "--read", "code.txt"]],
    ["a plan, from a code", ["other.json", "--read", "code.txt"]],
  ])("does not write over %s", async (_, [output = "", ...words]) => {
    const { out, err, code, files } = await runOver(there, [
      "card",
      ...(words.length > 0 ? words : ["plan.json"]),
      "-o",
      output,
    ]);
    expect(err).toBe(`-o: ${output} is already there, and is not written over; ${accepted(words)}\n`);
    expect({ out, code, files }).toEqual({ out: "", code: 2, files: {} });
  });

  test("writes over an earlier card, as a page or as data", async () => {
    const page = (await runOver(demoFiles(), demo)).out;
    const data = (await runOver(demoFiles(), [...demo, "--json"])).out;
    const files = { ...demoFiles(), "card.html": page, "card.json": data };
    expect((await runOver(files, [...demo, "-o", "card.html"])).files["card.html"]).toBe(page);
    expect((await runOver(files, [...demo, "--json", "-o", "card.json"])).files["card.json"]).toBe(data);
  });

  test("says that a folder is no file, before it flies", async () => {
    const files: Files = { ...memoryIo({}).files, read: () => Promise.resolve({ ok: false, reason: "not-a-file" }) };
    const { err, code } = await runOver({}, [...demo, "-o", "."], { files });
    expect([err, code]).toEqual(["-o: . is a folder or a device; the name of a file is accepted\n", 2]);
  });

  test("what cannot be written is told, with exit code 2", async () => {
    const io = { write: () => Promise.resolve("the disk is full") };
    const { out, err, code } = await runOver(demoFiles(), [...demo, "-o", "card.html"], io);
    expect([out, err, code]).toEqual(["", "-o: card.html cannot be written (the disk is full)\n", 2]);
  });

  test("ends with 3 and says stop at its head where a check does", async () => {
    const files = demoFiles({
      "demo-h150.motor.json": (motor) => {
        delete motor.delay.instructions;
      },
    });
    const { out, code } = await runOver(files, demo);
    expect(code).toBe(3);
    expect(out.indexOf('fc-stop"><h2>Stop')).toBeGreaterThan(0);
    expect(out.indexOf('fc-stop"><h2>Stop')).toBeLessThan(out.indexOf('fc-craft">'));
  });

  test("--read turns the card's code back into a plan with the same decision", async () => {
    const files = demoFiles();
    const { json } = await runOver(files, [...demo, "--json"]);
    const read = await runOver({ ...files, "code.txt": `${json().code.text}\n` }, [
      "card",
      "--read",
      "code.txt",
      "-o",
      "again.json",
    ]);
    expect([read.out, read.err, read.code]).toEqual(["", "again.json written.\n", 0]);
    const words = (plan: string) => ["decide", plan, "--json", ...few];
    const again = (await runOver({ "again.json": read.files["again.json"] ?? "" }, words("again.json"))).json();
    const first = (await runOver(files, words("plan.json"))).json();
    for (const key of ["settings", "toCut", "flight", "checks", "unopened"]) expect(again[key]).toEqual(first[key]);
  });

  test.each([
    ["no code", "hello", "DELAYWRIGHT1:"],
    ["a broken code", "DELAYWRIGHT1:BB8:", "read the code again"],
    ["an empty file", "", "empty"],
  ])("--read tells of %s with exit code 2", async (_, text, word) => {
    const { out, err, code } = await runOver({ "code.txt": text }, ["card", "--read", "code.txt"]);
    expect(err).toContain(word);
    expect(err).toContain("code.txt");
    expect([out, code]).toEqual(["", 2]);
  });

  test("--read tells of a missing file", async () => {
    const { err, code } = await runOver({}, ["card", "--read", "gone.txt"]);
    expect(err).toContain("gone.txt");
    expect(code).toBe(2);
  });
});
