import { describe, expect, test } from "vitest";
import type { LogDoubtCode } from "../log/log-types.js";
import { readLog } from "../log/read-log.js";
import { logColumnName, logColumnWhy, logDoubtSentence, logFaultSentence, logReadSentence } from "./log.en.js";

const columns = [
  { index: 0, heading: "t" },
  { index: 1, heading: "" },
];
const plain = (text: string) => text.replace(/[\u00a0\u202f\u2009]/g, " ");

describe("logDoubtSentence()", () => {
  const codes: Readonly<Record<LogDoubtCode, string>> = {
    "column-by-figures": "Column 2 is taken for height above the pad by its figures alone. Check it.",
    "unit-guessed":
      "Column 2 (height above the pad) is taken to be in x; nothing in the file says so. It might be in y.",
    "unit-disagrees": "Column 2 (height above the pad) says x, but its figures look like y. Check its unit.",
    "axis-guessed":
      "Column 2 is taken for the axis along the rocket, since it feels most; 2 other columns hold acceleration too.",
    reversed: "Column 2 rests at minus 1 g: it is turned round, so that forward is positive.",
    "several-columns": "Column 2 is taken for height above the pad; 2 other columns might be it too.",
    "count-not-time": "Column 2 rises by one each row: it may count rows and not the time.",
    "height-or-altitude":
      "Column 2 does not start near zero: it is taken for altitude above sea level, not height above the pad.",
    "time-goes-back": "The time goes back 2 times, first in line 7: x. The instrument may have started anew.",
    "rows-skipped": "2 lines have no time and are passed over, first in line 7: x.",
    "cells-unread": "Column 2 holds 2 cells that are no numbers, first in line 7: x.",
    "figures-beyond": "Column 2 (height above the pad) holds 2 figures beyond all bounds; they are passed over.",
    ragged: "2 rows end before the last column, first in line 7: x.",
    "rows-too-long":
      "2 rows have more cells than the file has columns, first in line 7: x. Look whether a number was parted there.",
    "too-many-marks": "Column 2 changes too often to be marks: none are taken from it.",
  };

  test.each(Object.entries(codes) as [LogDoubtCode, string][])("words %s", (code, words) => {
    const doubt = { code, column: 1, quantity: "height", found: "x", instead: "y", count: 2, line: 7 } as const;
    expect(plain(logDoubtSentence(doubt, columns))).toBe(words);
  });
});

test("logColumnName() and logColumnWhy() say which column and by what", () => {
  expect(logColumnName(columns, 0)).toBe('"t"');
  expect(logColumnWhy({ why: "heading-word", unitWhy: "in-heading" })).toBe("by its heading; unit in its heading");
  expect(logColumnWhy({ why: "not-used", unitWhy: null })).toBe("not used");
});

test("logReadSentence() says what was read", () => {
  const read = readLog("t (s);h (m)\n0;0\n0,5;1\n1;4\n1,5;2");
  expect(read.ok && plain(logReadSentence(read))).toBe(
    "4 rows from line 2 on, columns parted by semicolons, with decimal commas.",
  );
});

test("logFaultSentence() says what to do, with what was found", () => {
  const read = readLog("a,b\n0,1\n1,2\n2,3\n3,4", { time: { column: "t" }, height: { column: 2, unit: "stone" } });
  expect(!read.ok && read.faults.map(logFaultSentence)).toEqual([
    'The column for time is not in this file: "t". It takes one of "a", "b", or a number from 1 to 2.',
    'The unit for height above the pad is not known: "stone"; one of m, mm, cm, km, in, ft, yd is accepted.',
  ]);
});
