import fc from "fast-check";
import Papa from "papaparse";
import { expect, test } from "vitest";
import { readLog } from "./read-log.js";

/** Another way of reading a table: a library splits it, the language reads its numbers. */
function judge(text: string, delimiter: string, decimal: string) {
  const lines = text.split(/\r\n|\n|\r/).filter((line) => line.trim() !== "" && !/^\s*(#|\/\/|%)/.test(line));
  const rows = lines
    .slice(1)
    .map((line) => (Papa.parse<string[]>(line, { delimiter }).data[0] ?? []).map((cell) => cell.trim()));
  const number = (cell: string | undefined) => {
    const plain = (cell ?? "").replace(decimal, ".");
    const other = decimal === "," ? "." : ",";
    if ((cell ?? "").includes(other)) return Number.NaN;
    return /^[-+]?(\d+\.?\d*|\.\d+)([eE][-+]?\d{1,4})?$/.test(plain) ? Number(plain) : Number.NaN;
  };
  return rows.map((row) => [0, 1, 2].map((column) => number(row[column]))).filter(([time]) => !Number.isNaN(time));
}

const signs = fc.constantFrom(
  { delimiter: ",", decimal: "." },
  { delimiter: ";", decimal: "," },
  { delimiter: ";", decimal: "." },
  { delimiter: "\t", decimal: "," },
  { delimiter: "|", decimal: "." },
);
const word = fc.constantFrom("", "  ", "NaN", "apogee", "12 m", "--", "1.2.3", "inf", "?");
const figure = fc.tuple(fc.integer({ min: -9_999_999, max: 9_999_999 }), fc.integer({ min: 0, max: 4 }));
const cell = fc.oneof({ weight: 9, arbitrary: figure }, { weight: 1, arbitrary: word });
const row = fc.record({
  cells: fc.tuple(cell, cell),
  quoted: fc.boolean(),
  short: fc.boolean(),
  before: fc.constantFrom("", "", "", "\n", "# a remark\n", "// 1,2\n", "  \n"),
});

test("readLog() agrees with a plain reading of any table", () => {
  const ends = fc.constantFrom("\n", "\r\n", "\r");
  fc.assert(
    fc.property(
      signs,
      fc.array(row, { minLength: 6, maxLength: 60 }),
      ends,
      fc.boolean(),
      ({ delimiter, decimal }, rows, end, mark) => {
        const written = (value: readonly [number, number] | string) =>
          typeof value === "string" ? value : (value[0] / 10 ** value[1]).toFixed(value[1]).replace(".", decimal);
        const lines = rows.map(({ cells, quoted, short, before }, index) => {
          const time = (index / 20).toFixed(2).replace(".", decimal);
          const texts = cells.map(written).map((text) => (quoted ? `"${text}"` : text));
          return `${before}${[time, ...(short ? texts.slice(0, 1) : texts)].join(delimiter)}`;
        });
        // two rows that move, so that it is a record at all, and that tell the decimal sign
        const sure = [
          `9${decimal}25${delimiter}1${decimal}5${delimiter}2${decimal}5`,
          `9${decimal}75${delimiter}3${decimal}5${delimiter}4${decimal}5`,
        ];
        const text = `${mark ? "\uFEFF" : ""}${[["Time", "Height", "Speed"].join(delimiter), ...lines, ...sure].join("\n")}`;
        const read = readLog(text.replaceAll("\n", end), {
          time: { column: 1, unit: "s" },
          height: { column: 2, unit: "mm" },
          speed: { column: "Speed", unit: "cm/s" },
        });
        const expected = judge(text.replace("\uFEFF", ""), delimiter, decimal);
        expect(read.ok, JSON.stringify(read.ok ? null : read.faults)).toBe(true);
        if (!read.ok) return;
        expect(read.rows).toBe(expected.length);
        const { time, height, speed } = read.samples;
        // beyond 10 km below the pad and 5 km/s nothing is a figure of this field
        const within = (value: number, least: number, most: number) =>
          value >= least && value <= most ? value : Number.NaN;
        expected.forEach(([t, h, v], k) => {
          expect(time[k]).toBe(t);
          expect(height![k]).toBe(within(h! * 1e-3, -1e4, 2e5));
          expect(speed![k]).toBe(within(v! * 0.01, -5000, 5000));
        });
      },
    ),
    { numRuns: 400 },
  );
});

test("readLog() never throws, whatever it is given", () => {
  const near = fc.string({ unit: fc.constantFrom(...'0123456789.,;\t \n\r"#|tThmse-\0é'), maxLength: 300 });
  fc.assert(
    fc.property(near, (text) => {
      const read = readLog(text);
      if (!read.ok) {
        expect(read.faults.length).toBeGreaterThan(0);
        return;
      }
      expect(read.samples.time.every(Number.isFinite)).toBe(true);
      for (const values of Object.values(read.samples))
        if (values instanceof Float64Array) expect(values.length).toBe(read.rows);
    }),
    { numRuns: 3000 },
  );
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
      const read = readLog(bytes);
      expect(read.ok || read.faults.length > 0).toBe(true);
    }),
    { numRuns: 1000 },
  );
});
