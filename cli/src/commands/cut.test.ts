import { describe, expect, test } from "vitest";
import { demoFiles, type Loose, runOver } from "../../test/demo.js";

const twoEnds = demoFiles({
  "two-collar.tool.json": (tool: Loose) => {
    tool.ends = [
      { name: "long", removes: "8 s" },
      { name: "short", removes: "4 s" },
    ];
    tool.spacers = [{ name: "ring", keepsBack: "2 s", count: 1 }];
  },
});
const words = ["cut", "two-collar.tool.json", "--longest", "14s"];

describe("cut()", () => {
  test("a tool of two ends and a spacer makes exactly 14, 12, 10, 8, 6 s of 14 s", async () => {
    const { json, code } = await runOver(twoEnds, [...words, "--json"]);
    expect(json().settings.map((setting: { delay: number }) => setting.delay)).toEqual([14, 12, 10, 8, 6]);
    expect(json().settings[2]).toEqual({ delay: 10, removed: 4, end: "short", spacers: [], depth: 0.003175 });
    expect(json().settings[0]).toEqual({ delay: 14, removed: 0, end: null, spacers: [], depth: 0 });
    expect(code).toBe(0);
  });

  test("--most-removed and --least-left take settings away", async () => {
    const delays = async (more: string[]) =>
      (await runOver(twoEnds, [...words, "--json", ...more]))
        .json()
        .settings.map((each: { delay: number }) => each.delay);
    expect(await delays(["--most-removed", "4s"])).toEqual([14, 12, 10]);
    expect(await delays(["--least-left", "8 s"])).toEqual([14, 12, 10, 8]);
  });

  test("--to says how a delay is made", async () => {
    const { out, code } = await runOver(twoEnds, [...words, "--to", "10s"]);
    expect(out.split("\n")[0]).toBe("Cut to 10 s: take 4 s out, end short, no spacer, 3.2 mm (1/8 in).");
    expect(out).toContain("eye protection");
    expect(code).toBe(0);
  });

  test("--to names the neighbours of a delay that is not made, and ends with 3", async () => {
    const { out, code } = await runOver(twoEnds, [...words, "--to", "9s"]);
    expect(out).toMatch(
      /^This tool does not make 9 s of this element\. Nearest that it makes: 10 s \(.*\) and\s8 s \(/s,
    );
    expect(code).toBe(3);
    const { json } = await runOver(twoEnds, [...words, "--to", "20s", "--json"]);
    expect(json().to).toMatchObject({ setting: null, longer: null, shorter: { delay: 14 } });
  });

  test("--before and --after give the delay back exactly, with its uncertainty", async () => {
    const { json, code } = await runOver(twoEnds, [...words, "--before", "22.2mm", "--after", "25.375mm", "--json"]);
    expect(json().reading).toMatchObject({ removed: 4, delay: 10 });
    expect(json().reading.delaySd).toBeGreaterThan(0.05);
    expect(code).toBe(0);
    const { out } = await runOver(twoEnds, [...words, "--before", "22.2mm", "--after", "25.375mm"]);
    expect(out).toMatch(
      /^The delay is now 10\.0 s \(± 0\.\d from the readings, one sigma\): 4\.0 s taken out, 3\.2 mm/,
    );
  });

  /** 4 s taken out, 10 s left, ± 0.18 s. */
  const depths = [...words, "--before", "22.2mm", "--after", "25.375mm"];

  test.each([
    ["10s", "10 s was wanted: that is what it is, as far as the readings tell.", 0],
    ["10.1s", "10.1 s was wanted: that is what it is, as far as the readings tell.", 3],
    ["9.7s", "9.7 s was wanted: that is what it is, as far as the readings tell.", 3],
    ["9.6s", "9.6 s was wanted: it is 0.4 s longer.", 3],
    ["8s", "8 s was wanted: it is 2.0 s longer.", 0],
    ["12s", "12 s was wanted: it is 2.0 s shorter, and what is cut cannot be put back.", 0],
  ])("a reading is held against --to %s", async (to, word, ends) => {
    const { out, code } = await runOver(twoEnds, [...depths, "--to", to]);
    expect(out).toContain(word);
    expect(code).toBe(ends);
    expect(out.includes("This tool does not make")).toBe(ends === 3);
    const { json } = await runOver(twoEnds, [...depths, "--to", to, "--json"]);
    expect(json().to.difference).toBeCloseTo(10 - Number.parseFloat(to), 9);
  });

  test.each([
    ["--most-removed", "3s", "STOP: a limit of the motor's maker is passed: 4.0 s is taken out, most 3 s."],
    ["--least-left", "11s", "STOP: a limit of the motor's maker is passed: 10.0 s is left, least 11 s."],
  ])("a reading past %s says stop first, and ends with 3", async (option, limit, word) => {
    const { out, code } = await runOver(twoEnds, [...depths, option, limit]);
    expect(out.split("\n")[0]).toBe(word);
    expect(code).toBe(3);
    const { json } = await runOver(twoEnds, [...depths, option, limit, "--json"]);
    expect(json().passed).toMatchObject([{ limit: option.slice(2), allowed: Number.parseFloat(limit) }]);
  });

  test("a reading at the limits passes none", async () => {
    const { out, code } = await runOver(twoEnds, [...depths, "--most-removed", "4s", "--least-left", "10s"]);
    expect(out).not.toContain("STOP");
    expect(code).toBe(0);
  });

  test.each([
    ["a bare number", ["--to", "9"], "--to"],
    ["a unit of another kind", ["--to", "9mm"], "--to"],
    ["a reading without its other half", ["--before", "22.2mm"], "belong together"],
    [
      "a cut that became shallower",
      ["--before", "25mm", "--after", "22mm"],
      "--after: 22mm found; no less than --before, 25mm, is accepted, since a cut only gets deeper, for example --before 22mm --after 25mm",
    ],
    [
      "more cut than there is",
      ["--before", "0mm", "--after", "40mm"],
      "--after: 40mm found, more was cut than a delay of 14 s has; no more than 11.11mm is accepted after 0mm",
    ],
    ["a grain that the tool was not made for", ["--depth-per-second", "1mm"], "another grain"],
  ])("refuses %s with 2 and a word", async (_, more, word) => {
    const { err, out, code } = await runOver(twoEnds, [...words, ...more]);
    expect(err).toContain(word);
    expect({ out, code }).toEqual({ out: "", code: 2 });
  });

  test("a depth stop needs to know the grain", async () => {
    const files = {
      "stop.json": JSON.stringify({
        kind: "tool",
        version: 1,
        name: "Depth stop (demo)",
        stop: { from: "0 mm", to: "2 mm", step: "1 mm" },
      }),
    };
    const without = await runOver(files, ["cut", "stop.json", "--longest", "14s"]);
    expect(without.err).toContain("--depth-per-second");
    expect(without.code).toBe(2);
    const { json } = await runOver(files, [
      "cut",
      "stop.json",
      "--longest",
      "14s",
      "--depth-per-second",
      "1mm",
      "--json",
    ]);
    expect(json().settings.map((each: { delay: number }) => each.delay)).toEqual([14, 13, 12]);
  });

  test("a document of another kind is refused", async () => {
    const { err, code } = await runOver(twoEnds, ["cut", "demo.rocket.json", "--longest", "14s"]);
    expect(err).toContain("tool");
    expect(code).toBe(2);
  });
});
