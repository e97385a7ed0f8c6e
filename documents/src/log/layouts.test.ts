import { describe, expect, test } from "vitest";
import { ready } from "../../test/read-ready.js";

const times = [0, 0.5, 1, 1.5, 2];
const heights = [0, 2.5, 10, 7.5, 0.5];

const layouts: readonly (readonly [string, string])[] = [
  ["commas", "time (s),height (m)\n0,0\n0.5,2.5\n1,10\n1.5,7.5\n2,0.5"],
  ["semicolons and decimal commas", "time (s);height (m)\n0;0\n0,5;2,5\n1;10\n1,5;7,5\n2;0,5\n"],
  ["tabs and carriage returns", "time (s)\theight (m)\r0\t0\r0.5\t2.5\r1\t10\r1.5\t7.5\r2\t0.5\r"],
  ["bars", "time (s)|height (m)\r\n0|0\r\n0.5|2.5\r\n1|10\r\n1.5|7.5\r\n2|0.5"],
  ["blanks", "  time/s   height/m\n  0.0  0.0\n  0.5  2.5\n  1.0 10.0\n  1.5  7.5\n  2.0  0.5\n"],
  ["quotes", '"time (s)","height (m)"\n"0","0"\n"0.5","2.5"\n"1","10"\n"1.5","7.5"\n"2","0.5"'],
  ["quotes around decimal commas", '"time (s)","height (m)"\n"0","0"\n"0,5","2,5"\n"1","10"\n"1,5","7,5"\n"2","0,5"'],
  [
    "remarks and blank lines",
    "# one\n// two\n\ntime (s),height (m)\n0,0\n# three\n0.5,2.5\n\n1,10\n1.5,7.5\n; four\n2,0.5",
  ],
  ["headings behind a remark", "# invented\n# time (s), height (m)\n0, 0\n0.5, 2.5\n1, 10\n1.5, 7.5\n2, 0.5\n"],
  ["a preamble", "Recorder: 12\nSerial, 1234\nRate: 2 Hz\n\ntime (s),height (m)\n0,0\n0.5,2.5\n1,10\n1.5,7.5\n2,0.5"],
  ["a row of units", "time,height\n(ms),(ft)\n0,0\n500,8.2020997\n1000,32.808399\n1500,24.6062992\n2000,1.6404199"],
  ["units alone as headings", "s,m\n0,0\n0.5,2.5\n1,10\n1.5,7.5\n2,0.5"],
  ["ragged rows", "time (s),height (m),note\n0,0\n0.5,2.5,a,b,c\n1,10\n1.5,7.5,d\n2,0.5"],
  ["a clock", "time,height (m)\n11:59:59.0,0\n11:59:59.5,2.5\n12:00:00.0,10\n12:00:00.5,7.5\n12:00:01.0,0.5"],
  [
    "a clock over midnight",
    "time,height (m)\n23:59:59.0,0\n23:59:59.5,2.5\n0:00:00.0,10\n0:00:00.5,7.5\n0:00:01.0,0.5",
  ],
  ["figures with signs of print", "time (s),height (m)\n+0,−0\n5e-1,2.50\n1.,10\n1.5,7.5\n2,.5"],
  ["filling behind the last row", `time (s),height (m)\n0,0\n0.5,2.5\n1,10\n1.5,7.5\n2,0.5\n${"\0".repeat(4096)}`],
];

describe("readLog() reads a file laid out with", () => {
  test.each(layouts)("%s", (_, text) => {
    const { samples } = ready(text);
    expect([...samples.time].map((time) => Number((time - samples.time[0]!).toFixed(9)))).toEqual(times);
    expect([...(samples.height ?? [])].map((height) => Number(height.toFixed(6)) + 0)).toEqual(heights);
  });
});

const encode = (text: string, encoding: "utf8" | "utf16le" | "latin1") => new Uint8Array(Buffer.from(text, encoding));
const german = "Zeit (s);Höhe (m)\n0;0\n0,5;2,5\n1;10\n1,5;7,5\n2;0,5";
const bigEndian = (text: string) => new Uint8Array(Buffer.from(text, "utf16le").swap16());

describe("readLog() reads bytes of", () => {
  test.each([
    ["UTF-8", encode(german, "utf8")],
    ["UTF-8 with its mark", encode(`\uFEFF${german}`, "utf8")],
    ["UTF-16 with its mark", encode(`\uFEFF${german}`, "utf16le")],
    ["UTF-16 the other way round", bigEndian(`\uFEFF${german}`)],
    ["UTF-16 without a mark", encode(german, "utf16le")],
    ["Latin-1", encode(german, "latin1")],
  ])("%s", (_, bytes) => {
    const read = ready(bytes);
    expect(read.headings).toEqual(["Zeit (s)", "Höhe (m)"]);
    expect([...read.samples.height!]).toEqual(heights);
    expect(read.mapping).toEqual({
      time: { column: "Zeit (s)", unit: "s" },
      height: { column: "Höhe (m)", unit: "m" },
    });
  });
});
