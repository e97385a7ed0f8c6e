import { describe, expect, test } from "vitest";
import { inventedFlight, logText, randomNumbers } from "../../test/invented-log.js";
import { logDoubtSentence, logFaultSentence } from "../words/log.en.js";
import { LARGEST_LOG } from "./log-bytes.js";
import { readLog } from "./read-log.js";

const rows = (count: number, cell: (k: number) => string) =>
  Array.from({ length: count }, (_, k) => cell(k)).join("\n");
const noise = randomNumbers(11);
const binary = Uint8Array.from({ length: 5000 }, () => Math.floor(256 * noise()));

const broken: readonly (readonly [string, Uint8Array | string, readonly string[]])[] = [
  ["an empty file", "", ["empty-file"]],
  ["blanks only", " \n\n \t\r\n", ["empty-file"]],
  ["a mark of an encoding only", new Uint8Array([0xef, 0xbb, 0xbf]), ["empty-file"]],
  ["bytes that are no text", binary, ["not-text"]],
  ["zeros", new Uint8Array(10_000), ["empty-file"]],
  ["one column", rows(50, (k) => `${k / 20}`), ["one-column"]],
  ["words", rows(50, (k) => `it did,fly ${"very ".repeat(k % 3)}high`), ["no-figures"]],
  ["headings only", "time (s),height (m)\n", ["no-figures"]],
  ["a document of another kind", '{ "kind": "flight",\n "version": 1,\n "name": "x" }', ["no-figures"]],
  ["equal rows", `time (s),height (m)\n${rows(50, () => "1.5,20")}`, ["time-stands"]],
  ["equal rows without headings", rows(50, () => "1.5,20"), ["no-time", "nothing-of-flight"]],
  ["equal heights", `time (s),height (m)\n${rows(50, (k) => `${k / 20},20`)}`, ["nothing-moves"]],
  ["a time that runs backwards", `time (s),height (m)\n${rows(50, (k) => `${-k / 20},${k}`)}`, ["time-runs-back"]],
  ["no time", `height (m),speed (m/s)\n${rows(50, (k) => `${Math.sin(k)},${Math.cos(k)}`)}`, ["no-time"]],
  ["no height", `time (s),battery (V)\n${rows(50, (k) => `${k},8.${k}`)}`, ["nothing-of-flight"]],
  ["two rows", "time (s),height (m)\n0,0\n1,5", ["too-few-rows"]],
  [
    "heights that are no numbers",
    `time (s),height (m),speed (m/s)\n${rows(50, (k) => `${k},NaN,${k % 7}`)}`,
    ["nothing-of-flight"],
  ],
  [
    "decimal commas among commas",
    `time (s),height (m)\n${rows(50, (k) => `${k},5,${k % 7},2`)}`,
    ["comma-parts-columns"],
  ],
  [
    "thousands parted by blanks",
    `time/s height/m\n${rows(50, (k) => (k % 9 > 4 ? `${k}.5 1 01${k % 9}.2` : `${k}.5 99${k % 9}.2`))}`,
    ["blank-parts-columns"],
  ],
  ["a line without an end", "1,2,".repeat(100_000), ["line-too-long"]],
];

describe("readLog() refuses with a clear word", () => {
  test.each(broken)("%s", (_, given, codes) => {
    const read = readLog(given);
    expect(read.ok ? [] : read.faults.map(({ code }) => code)).toEqual(codes);
    if (read.ok) return;
    for (const fault of read.faults) expect(logFaultSentence(fault)).toMatch(/^[A-Z].+[.]$/);
  });

  test("thousands parted by commas, with the first line of them and what it looks like", () => {
    const heights = inventedFlight().map(({ height }) =>
      (3 * height).toLocaleString("en", { minimumFractionDigits: 1 }),
    );
    const line = 2 + heights.findIndex((height) => height.includes(","));
    const read = readLog(`time (s),height (m)\n${heights.map((height, k) => `${k / 20},${height}`).join("\n")}`);
    const long = heights.filter((height) => height.includes(",")).length;
    expect(!read.ok && read.faults.map(logFaultSentence)).toEqual([
      `The file has ${long} of ${heights.length} rows with more cells than its 2 columns, first in line ${line}: "${(line - 2) / 20},${heights[line - 2]}", which looks like the number ${heights[line - 2]}. A comma parts its columns and seems to stand in its numbers, too. Export the flight anew: numbers with a decimal point and no sign for thousands, or semicolons between the columns. If the cells are columns of their own, give each a heading.`,
    ]);
  });

  test("a file that is too large, without looking into it", () => {
    const read = readLog(new Uint8Array(LARGEST_LOG + 1));
    expect(!read.ok && read.faults.map(logFaultSentence)).toEqual([
      "The file is too large: 256000001 bytes; at most 256000000 bytes are read.",
    ]);
  });

  test("more rows than any flight has", () => {
    const read = readLog(new Uint8Array(6_000_000).fill(10, 1).fill(49, 0, 1));
    expect(!read.ok && read.faults[0]?.code).toBe("too-many-rows");
  });
});

describe("readLog() passes over what is broken in a log, and tells of it", () => {
  const good = inventedFlight().map((row) => [row.time.toFixed(2), row.height.toFixed(2)]);
  const log = (bend: (cells: string[][]) => void) => {
    const cells = good.map((each) => [...each]);
    bend(cells);
    return readLog(`time (s),height (m)\n${cells.map((each) => each.join(",")).join("\n")}`);
  };

  test("words, infinities and huge figures among heights", () => {
    const read = log((cells) => {
      cells[10]![1] = "high";
      cells[20]![1] = "inf";
      cells[30]![1] = "1e308";
      cells[40]![1] = "1e999";
      cells[50]![1] = "NaN";
      cells[60]![1] = "";
    });
    if (!read.ok) throw new Error("not read");
    expect(read.rows).toBe(good.length);
    for (const k of [10, 20, 30, 40, 50, 60]) expect(read.samples.height![k]).toBeNaN();
    expect(read.samples.height!.filter(Number.isNaN)).toHaveLength(6);
    expect(read.columns[1]!.unread).toEqual({
      count: 3,
      first: [
        { line: 12, found: '"high"' },
        { line: 22, found: '"inf"' },
        { line: 42, found: '"1e999"' },
      ],
    });
    expect(read.doubts.map((doubt) => logDoubtSentence(doubt, read.columns).replace(/[\u00a0\u202f]/g, " "))).toEqual([
      '"height (m)" (height above the pad) holds 1 figure beyond all bounds; it is passed over.',
      '"height (m)" holds 3 cells that are no numbers, first in line 12: "high".',
    ]);
  });

  test("lines without a time, endless lines, zeros within, and headings that come again", () => {
    const read = log((cells) => {
      cells[5]![0] = "";
      cells[6]![0] = "1e300";
      cells[7] = ["9".repeat(70_000), "1"];
      cells[8]![0] = "\0\0\0\0";
      cells.splice(900, 0, ["time (s)", "height (m)"]);
    });
    if (!read.ok) throw new Error("not read");
    expect(read.rows).toBe(good.length - 4);
    expect(read.skippedRows).toBe(5);
    expect(read.skipped.map(({ line }) => line)).toEqual([7, 8, 9, 10, 902]);
    expect(read.skipped[4]?.found).toBe('"time (s),height (m)"');
  });

  test("few rows that go on behind the last column", () => {
    const read = log((cells) => {
      cells[10]![1] = "1,413.1";
      cells[20]!.push("", "");
    });
    if (!read.ok) throw new Error("not read");
    expect(read.doubts.at(-1)).toMatchObject({ code: "rows-too-long", count: 1, line: 12 });
  });

  test("rows that end with the sign that parts them", () => {
    const read = log((cells) => {
      for (const each of cells) each.push("");
    });
    expect(read.ok && read.doubts).toEqual([]);
  });

  test("a restart in the middle, with its line", () => {
    const text = logText(inventedFlight(), [
      ["time (s)", (row) => row.time],
      ["height (m)", (row) => row.height],
    ]);
    const read = readLog(text + text.slice(text.indexOf("\n") + 1));
    if (!read.ok) throw new Error("not read");
    expect(read.rows).toBe(2 * good.length);
    expect(read.doubts).toMatchObject([{ code: "time-goes-back", count: 1, line: good.length + 2 }]);
  });

  test("a quote that is left open spoils its line only", () => {
    const read = log((cells) => {
      cells[100]![1] = `"${cells[100]![1]}`;
      cells[200]![0] = `"${cells[200]![0]}`;
    });
    if (!read.ok) throw new Error("not read");
    expect(read.rows).toBe(good.length - 1);
    expect(read.samples.height![101]).toBe(Number(good[101]![1]));
  });

  test("marks that change in every row are none", () => {
    const text = logText(inventedFlight(), [
      ["time (s)", (row) => row.time],
      ["height (m)", (row) => row.height],
      ["state", (row) => `w${row.time.toFixed(3)}`],
    ]);
    const read = readLog(text);
    expect(read.ok && read.samples.marks).toEqual([]);
    expect(read.ok && read.doubts.map(({ code }) => code)).toEqual(["too-many-marks"]);
  });

  test("a file cut anywhere", () => {
    const text = logText(inventedFlight(), [
      ["time (s)", (row) => row.time],
      ["height (m)", (row) => row.height],
    ]);
    for (let cut = 0; cut < 400; cut++) {
      const read = readLog(text.slice(0, cut));
      if (read.ok) expect(read.samples.time.length).toBe(read.rows);
      else expect(read.faults.length).toBeGreaterThan(0);
    }
  });
});
