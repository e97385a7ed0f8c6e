import { describe, expect, test } from "vitest";
import { inventedFlight, logText, pressureAt } from "../../test/invented-log.js";
import { ready, taken } from "../../test/read-ready.js";
import { logPreview, readLog } from "./read-log.js";

const flight = inventedFlight();

describe("readLog() with a mapping", () => {
  const text = "a,b,c\n0,900,5\n1,800,6\n2,700,7\n3,900,8";

  test("takes it as a whole, by headings and by numbers", () => {
    const read = ready(text, { time: { column: "A", unit: "ms" }, pressure: { column: 2, unit: "hPa" } });
    expect([...read.samples.time]).toEqual([0, 0.001, 0.002, 0.003]);
    expect([...read.samples.pressure!]).toEqual([90_000, 80_000, 70_000, 90_000]);
    expect(taken(read)).toEqual(["time ms", "pressure hPa", "-"]);
    expect(read.columns.map(({ why }) => why)).toEqual(["given", "given", "not-used"]);
  });

  test("reads units that are left out as the heading says, else as SI", () => {
    const read = ready("t (ms),p\n0,90000\n5,80000\n10,70000\n15,90000", {
      time: { column: 1 },
      pressure: { column: 2 },
    });
    expect(read.mapping).toEqual({ time: { column: "t (ms)", unit: "ms" }, pressure: { column: "p", unit: "Pa" } });
  });

  test("names every column and unit that is not there, and still shows the file", () => {
    const read = readLog(text, { time: { column: "x" }, height: { column: 9 }, speed: { column: 3, unit: "kg" } });
    expect(!read.ok && read.faults.map(({ path, code }) => `${path} ${code}`)).toEqual([
      "columns.time.column column-missing",
      "columns.height.column column-missing",
      "columns.speed.unit unit-unknown",
    ]);
    expect(!read.ok && read.preview?.lines[0]).toEqual({ line: 2, cells: ["0", "900", "5"] });
  });

  test("that was guessed reads the file in the same way again", () => {
    const guessed = ready(
      logText(flight, [
        ["time", (row) => row.time],
        ["h", (row) => row.height / 0.3048],
        ["p", (row) => row.pressure / 100],
      ]),
    );
    const again = ready(
      logText(flight, [
        ["time", (row) => row.time],
        ["h", (row) => row.height / 0.3048],
        ["p", (row) => row.pressure / 100],
      ]),
      guessed.mapping,
    );
    expect(again.samples).toEqual(guessed.samples);
    expect(again.headingsKey).toBe("time | h | p");
  });
});

test("logPreview() shows rows, headings and guesses also where no time is found", () => {
  const preview = logPreview("height (m),note\n0,a\n4,b\n3,c\n2,d");
  expect(preview).toMatchObject({
    headings: ["height (m)", "note"],
    lines: [{ line: 2, cells: ["0", "a"] }, { line: 3 }, { line: 4 }, { line: 5 }],
    columns: [{ guess: "height", why: "heading-word" }, { guess: "marks" }],
  });
  expect(logPreview("")).toBeNull();
});

test("the invented flights are the standard atmosphere's", () => {
  // U.S. Standard Atmosphere, 1976, table I, by geometric altitude: 89,876 Pa at 1,000 m to the geopotential's 2 Pa
  expect(pressureAt(1000)).toBeCloseTo(89_874, -1);
});
