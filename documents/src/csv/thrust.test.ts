import fc from "fast-check";
import { expect, test } from "vitest";
import { issueSentence } from "../words/issues.en.js";
import { readThrust, readThrustFile } from "./thrust.js";

const times = [0, 0.1, 1.6, 2.1];
const thrusts = [0, 190, 150, 0];
const lb = 4.4482216152605;

const good: readonly (readonly [string, string])[] = [
  ["a comma and headings", "time,thrust\n0,0\n0.1,190\n1.6,150\n2.1,0\n"],
  ["no heading", "0,0\n0.1,190\n1.6,150\n2.1,0"],
  ["a semicolon and decimal commas", "Time (s);Thrust (N)\n0;0\n0,1;190\n1,6;150\n2,1;0"],
  ["a semicolon, decimal commas and no heading", "0;0\n0,1;190\n1,6;150\n2,1;0"],
  ["decimal commas with three decimals", "0,000;0\n0,100;190,000\n1,600;150,000\n2,100;0"],
  ["tabs", "time\tthrust\n0\t0\n0.1\t190\n1.6\t150\n2.1\t0"],
  ["spaces", "0 0\n0.1   190\n1.6 150\n2.1 0"],
  ["milliseconds and kilonewtons", "t [ms], F [kN]\n0,0\n100,0.19\n1600,0.15\n2100,0"],
  ["columns the other way round", "thrust (N),time (s)\n0,0\n190,0.1\n150,1.6\n0,2.1"],
  ["more columns", "point,time,note,thrust\n1,0,a,0\n2,0.1,b,190\n3,1.6,c,150\n4,2.1,d,0"],
  [
    "comments, a mark and blank lines",
    "\uFEFF# measured\n\ntime,thrust\r\n0,0\r\n0.1,190\r\n// tail\r\n1.6,150\r\n2.1,0\r\n\r\n",
  ],
  ["quotes", '"time","thrust"\n"0","0"\n"0.1","190"\n"1.6","150"\n"2.1","0"'],
  ["commas at the ends of rows", "time,thrust\n0,0,\n0.1,190,,\n1.6,150,\n2.1,0"],
  ["more columns without a heading", "0.0,0,1\n0.1,190,2\n1.6,150,3\n2.1,0"],
  ["units alone as headings", "s,N\n0,0\n0.1,190\n1.6,150\n2.1,0"],
];

test.each(good)("readThrust() reads %s", (_, text) => {
  const read = readThrust(text);
  expect(read.ok, JSON.stringify(read)).toBe(true);
  if (!read.ok) return;
  expect(read.curve.times.map((time) => Number(time.toPrecision(12)))).toEqual(times);
  expect(read.curve.thrusts.map((thrust) => Number(thrust.toPrecision(12)))).toEqual(thrusts);
});

test("readThrust() turns pounds-force into newtons", () => {
  const read = readThrust("time (s),thrust (lbf)\n0,0\n0.1,25\n2,0");
  expect(read.ok && read.curve.thrusts).toEqual([0, 25 * lb, 0]);
});

const bad: readonly (readonly [string, string, readonly string[]])[] = [
  ["an empty file", "\n# nothing\n", ["line 1 no-points"]],
  ["words for numbers", "time,thrust\n0,0\n0.1,much\nlater,5", ["line 3 not-a-number", "line 4 not-a-number"]],
  ["falling times", "time,thrust\n0,0\n0.5,190\n0.4,150", ["line 4 time-not-rising"]],
  ["a missing column", "time,thrust\n0,0\n0.1", ["line 3 not-a-number"]],
  ["negative thrust", "0,0\n0.1,-5\n1,3", ["line 2 out-of-range"]],
  ["an unknown unit", "time (s),thrust (dyn)\n0,0\n1,5", ["line 1 unit-unknown"]],
  ["headings without time and thrust", "a,b\n0,0\n1,5", ["line 1 column-missing", "line 1 column-missing"]],
  ["one point", "0,5", ["line 1 no-points"]],
  ["an endless line", `0,0\n${" 1".repeat(5000)}`, ["line 2 line-too-long"]],
  ["no thrust", "0,0\n1,0", ["line 2 no-thrust"]],
  [
    "thousands where commas part columns",
    "time,thrust\n0.0,0\n0.1,1,200\n1.0,1,150.5\n1.5,990\n2.0,0",
    ["line 3 comma-parts-columns", "line 4 comma-parts-columns"],
  ],
  [
    "thousands where commas part columns, without a heading",
    "0.0,0\n0.1,1,200\n1.5,990\n2.0,0",
    ["line 2 comma-parts-columns"],
  ],
  [
    "decimal commas where commas part columns",
    "time,thrust\n0,1,120,5\n2,0,0",
    ["line 2 comma-parts-columns", "line 3 comma-parts-columns"],
  ],
  [
    "nothing but decimal commas where commas part columns",
    "0,1,120,5\n1,2,90,0\n2,0,0,0",
    ["line 1 comma-parts-columns", "line 2 comma-parts-columns", "line 3 comma-parts-columns"],
  ],
  [
    "decimal commas in quotes",
    '"0,0","0"\n"0,1","120,5"\n"2,1","0"',
    ["line 1 comma-parts-columns", "line 2 comma-parts-columns", "line 3 comma-parts-columns"],
  ],
  ["thousands parted by blanks", "time thrust\n0.0 0\n0.1 1 200\n1.5 990\n2.0 0", ["line 3 blank-parts-columns"]],
  ["thousands beside decimal points", "t\tF\n0\t0\n0.1\t1,250\n1.6\t900\n2\t0", ["line 3 ambiguous-comma"]],
  [
    "what may be thousands or decimals",
    "0;0\n1;1,250\n2;1,150\n3;0",
    ["line 2 ambiguous-comma", "line 3 ambiguous-comma"],
  ],
];

test.each(bad)("readThrust() names the line of %s", (_, text, expected) => {
  const read = readThrust(text);
  expect(read.ok ? [] : read.faults.map((fault) => `${fault.path} ${fault.code}`)).toEqual(expected);
});

test("readThrust() says how to write numbers where a comma parts columns", () => {
  const read = readThrust("time,thrust\n0,0\n0.1,1,200\n2,0");
  expect(read.ok ? [] : read.faults.map(issueSentence)).toEqual([
    'line 3: a comma parts columns here: "0.1,1,200" found; a line of numbers with a decimal point and no sign for thousands, or with semicolons between the columns, is accepted, for example "0.10, 1250.5" or "0,10; 1250,5"',
  ]);
});

test("readThrustFile() says of an empty file what a thrust curve needs, and names a wrong encoding", () => {
  const said = (bytes: Uint8Array) => {
    const read = readThrustFile(bytes);
    return read.ok ? [] : read.faults.map(({ code, accepted }) => `${code}: ${accepted}`);
  };
  expect(said(new Uint8Array())).toEqual(["no-points: lines with a time and a thrust"]);
  expect(said(new Uint8Array([0xff, 0xfe, 48, 0]))).toEqual(["encoding: a file saved as UTF-8"]);
});

test("readThrust() never throws and never gives what is not finite", () => {
  const near = fc.string({ unit: fc.constantFrom(...'0123456789.,;\t \n"#tNs()-e'), maxLength: 80 });
  fc.assert(
    fc.property(near, (text) => {
      const read = readThrust(text);
      if (read.ok) expect([...read.curve.times, ...read.curve.thrusts].every(Number.isFinite)).toBe(true);
      else expect(read.faults.length).toBeGreaterThan(0);
    }),
    { numRuns: 2000 },
  );
});
