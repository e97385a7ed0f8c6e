import { describe, expect, test } from "vitest";
import { demoFiles, runOver } from "../../test/demo.js";
import { memoryIo } from "../io/memory.js";
import { run } from "../run.js";

const commands = ["decide", "fly", "shortlist", "cut", "charge", "window", "prep", "card", "debrief", "check"];

describe("runProgram()", () => {
  test("--version tells the version", async () => {
    expect(await runOver({}, ["--version"])).toMatchObject({ out: "0.0.0-test\n", err: "", code: 0 });
  });

  test("--help lists the commands that exist, and no others", async () => {
    const { out, code } = await runOver({}, ["--help"]);
    const listed = out.slice(out.indexOf("\nCommands:"), out.indexOf("\nExamples:"));
    const names = [...listed.matchAll(/^ {2}([a-z]+) /gm)].map((match) => match[1]);
    expect(names.sort()).toEqual([...commands, "app", "help"].sort());
    expect(code).toBe(0);
  });

  test.each(commands)("help %s shows examples within 100 columns", async (name) => {
    const { out, code } = await runOver({}, ["help", name]);
    expect(out).toContain(`Usage: delaywright ${name}`);
    expect(out).toContain(`  delaywright ${name} `);
    expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
    expect(code).toBe(0);
  });

  test.each([
    ["no words at all", [], "Usage:"],
    ["an unknown command", ["decid", "plan.json"], "did you mean decide?"],
    ["a debrief of nothing", ["debrief", "plan.json"], "log"],
    ["an unknown option", ["decide", "plan.json", "--modle", "aligned"], "did you mean --model?"],
    ["a missing argument", ["decide"], "plan"],
    ["a card of nothing", ["card"], "a plan's file is missing"],
    ["a card of two things", ["card", "plan.json", "--read", "code.txt"], "not both"],
    ["an unknown paper", ["card", "plan.json", "--paper", "a6"], "a5, a4 or letter is accepted"],
    ["unknown units", ["card", "plan.json", "--units", "feet"], "metric or imperial is accepted"],
    ["one argument too many", ["decide", "plan.json", "other.json"], "too many arguments"],
    ["an option without its value", ["decide", "plan.json", "--draws"], "--draws"],
    [
      "the rigid model where too many flights are drawn",
      ["window", "plan.json", "--model", "rigid"],
      "rigid flies one plan at a time",
    ],
    ["an unknown model", ["fly", "plan.json", "--model", "point"], "pitching, aligned or rigid is accepted"],
    ["no draws", ["decide", "plan.json", "--draws", "0"], "a whole number from 1 to"],
    ["half a draw", ["decide", "plan.json", "--draws", "1.5"], "a whole number from 1 to"],
    ["a seed that is a word", ["decide", "plan.json", "--seed", "x"], "--seed"],
    ["too many workers", ["decide", "plan.json", "--workers", "1000"], "a whole number from 1 to 32"],
    ["two forms at once", ["fly", "plan.json", "--csv", "--json"], "cannot be used with"],
    ["rows at no distance", ["fly", "plan.json", "--every", "0s"], "more than zero is accepted"],
    ["a delay below zero", ["fly", "plan.json", "--delay=-1s"], "nothing below zero is accepted"],
    ["a missing file", ["decide", "gone.json"], "no such file"],
    ["a file of another kind", ["decide", "demo.rocket.json"], "plan"],
  ])("%s: exit code 2, a word on standard error, nothing on standard output", async (_, words, word) => {
    const { out, err, code } = await runOver(demoFiles(), words);
    expect(err).toContain(word);
    expect(err).not.toMatch(/^error:|\n\s+at /m);
    expect({ out, code }).toEqual({ out: "", code: 2 });
  });

  test.each([
    [
      ["decide", "plan.json", "--draws", "0", "--seed", "-1", "--model", "foo"],
      ["--draws", "--seed", "--model"],
    ],
    [
      ["fly", "plan.json", "--delay", "9", "--every", "0s", "--draw", "x"],
      ["--draw", "--delay", "--every"],
    ],
    [
      ["cut", "tool.json", "--longest", "0s", "--to", "9", "--after", "2s"],
      ["--longest", "--to", "--after"],
    ],
    [
      ["window", "plan.json", "--cut", "9", "--model", "rigid"],
      ["--cut", "--model"],
    ],
    [
      ["shortlist", "plan.json", "--motors", ".", "--aim", "x", "--height", "0m", "--seed", "x"],
      ["--aim", "--height", "--seed"],
    ],
    [
      ["card", "plan.json", "--paper", "a6", "--units", "feet", "--draws", "0"],
      ["--paper", "--units", "--draws"],
    ],
    [
      ["prep", "plan.json", "--units", "feet", "--seed", "x"],
      ["--units", "--seed"],
    ],
    [
      ["debrief", "plan.json", "a.csv", "--set", "9", "--column", "x=1", "--column", "y=1", "--workers", "0"],
      ["--set", "--column", "--column", "--workers"],
    ],
  ])("%j tells every option that is wrong at once", async (words, options) => {
    const { out, err, code } = await runOver(demoFiles(), words);
    expect(
      err
        .trimEnd()
        .split("\n")
        .map((line) => line.split(":")[0]),
    ).toEqual(options);
    expect({ out, code }).toEqual({ out: "", code: 2 });
  });

  test.each([
    [
      ["fly", "plan.json", "--delay", "9s", "--delay", "10s"],
      '--delay: given 2 times ("9s", "10s"); it is accepted once\n',
    ],
    [["card", "plan.json", "-o", "a", "--output", "b"], '--output: given 2 times ("a", "b"); it is accepted once\n'],
    [["check", "plan.json", "--json", "--json"], "--json: given 2 times; it is accepted once\n"],
    [
      ["decide", "plan.json", "--seed", "1", "--draws", "1", "--seed", "2", "--draws", "2"],
      '--seed: given 2 times ("1", "2"); it is accepted once\n--draws: given 2 times ("1", "2"); it is accepted once\n',
    ],
    [
      ["debrief", "plan.json", "a.csv", "--column", "height=3:ft", "--column", "height=4:m"],
      '--column: "height=4:m" found; height is accepted once\n',
    ],
  ])("%j says that an option is given twice", async (words, word) => {
    expect(await runOver(demoFiles(), words)).toMatchObject({ out: "", err: word, code: 2 });
  });

  test.each([
    [false, 1],
    [true, 2],
  ])("a defect ends with 1, in one line unless debugging (%s)", async (debug, lines) => {
    const io = memoryIo(demoFiles(), { openPool: () => Promise.reject(new Error("the pool is dry")) });
    expect(await run(["decide", "plan.json"], io, { version: "0", debug })).toBe(1);
    expect(io.written.err).toContain("A defect in delaywright, not in your documents: the pool is dry.");
    expect(io.written.err.trimEnd().split("\n").length).toBeGreaterThanOrEqual(lines);
    expect(/\n\s+at /.test(io.written.err)).toBe(debug);
    expect(io.written.out).toBe("");
  });
});
