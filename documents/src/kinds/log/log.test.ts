import { expect, test } from "vitest";
import { readLog } from "../../log/read-log.js";
import { readValue } from "../../read.js";
import { issueSentence } from "../../words/issues.en.js";

const log = (columns: unknown, more: object = {}) => ({
  kind: "log",
  version: 1,
  name: "Third flight",
  source: "third.csv",
  columns,
  ...more,
});
const issues = (value: unknown) => readValue(value, { file: "" }).issues.map(issueSentence);

test("a log takes every quantity that a file may hold, and what readLog() guesses", () => {
  const read = readLog(
    "t [ms],alt agl [ft],a (g),vbat,event\n0,0,1,8.1,\n50,3,9,8.1,UP\n100,9,9,8.0,\n150,5,1,8.0,DOWN",
  );
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  expect(read.mapping).toEqual({
    time: { column: "t [ms]", unit: "ms" },
    height: { column: "alt agl [ft]", unit: "ft" },
    acceleration: { column: "a (g)", unit: "g" },
    battery: { column: "vbat", unit: "V" },
    marks: { column: "event" },
  });
  const document = log(read.mapping, { headings: read.headingsKey, instrument: "the blue one" });
  expect(issues(document)).toEqual([]);
  const reversed = { ...read.mapping, acceleration: { column: 3, unit: "g", reversed: true } };
  expect(issues(log(reversed))).toEqual([]);
});

test("a log says which columns are missing, in unknown units, or taken twice, at once", () => {
  expect(issues(log({ time: { column: 1, unit: "kg" }, speed: { column: 1, unit: "fps" } }))).toEqual([
    'columns.height: nothing found; height, altitude, pressure or acceleration is accepted, for example { "column": "Height (m)", "unit": "m" }',
    'columns.time.unit: this unit is not known: "kg" found; one of s, ms, us, ns, min, h:min:s is accepted, for example "s"',
    "columns.speed.column: 1 found; a column of its own, since time stands there is accepted",
  ]);
});
