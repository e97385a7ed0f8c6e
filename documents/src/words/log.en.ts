import type { Fault } from "../issue.js";
import type {
  LogColumn,
  LogColumnReason,
  LogDoubt,
  LogDoubtCode,
  LogQuantity,
  LogUnitReason,
  ReadLogRecord,
} from "../log/log-types.js";
import { GLUE } from "../quantity/glue.js";
import { own } from "./own.js";

const quantities: Readonly<Record<LogQuantity, string>> = Object.freeze({
  time: "time",
  height: "height above the pad",
  altitude: "altitude above sea level",
  pressure: "air pressure",
  speed: "vertical speed",
  acceleration: "acceleration along the axis",
  temperature: "temperature",
  battery: "voltage of the battery",
  marks: "the instrument's own marks",
});

/** What a column holds, as a word: `height above the pad`. */
export function logQuantityWords(quantity: LogQuantity): string {
  return quantities[quantity];
}

const columnReasons: Readonly<Record<LogColumnReason, string>> = Object.freeze({
  given: "as you said",
  "heading-word": "by its heading",
  "heading-unit": "by the unit in its heading",
  rises: "no heading; its figures rise steadily",
  "leaves-and-comes-back": "no heading; its figures leave their start and come back",
  "air-pressure": "no heading; its figures are air pressure, and dip",
  "agrees-with-pressure": "no heading; its figures rise as the pressure falls",
  "slope-of-height": "no heading; its figures are how fast the height changes",
  "rests-at-one-g": "no heading; its figures rest at 1 g",
  "peaks-early": "no heading; its figures peak before the top",
  "nearly-constant": "no heading; its figures are a battery's and hardly change",
  "drifts-slowly": "no heading; its figures are a temperature's and drift slowly",
  texts: "no heading; it holds words",
  "not-used": "not used",
});

const unitReasons: Readonly<Record<LogUnitReason, string>> = Object.freeze({
  given: "unit as you said",
  "in-heading": "unit in its heading",
  "in-unit-row": "unit below its heading",
  "by-form": "written as a clock's time",
  "sample-rate": "unit by the number of rows a second",
  "fall-near-apogee": "unit by the fall near the top, which is 1 g",
  "air-pressure": "unit by what air presses on a pad",
  "agrees-with-pressure": "unit by the pressure beside it",
  "agrees-with-height": "unit by how fast the height changes",
  "rests-at-one-g": "unit by 1 g at rest",
  plausible: "the usual unit",
  si: "SI unit, since none is named",
});

/**
 * By what a column and its unit were told, as a clause.
 *
 * @example
 * logColumnWhy({ why: "heading-word", unitWhy: "in-heading" }); // "by its heading; unit in its heading"
 */
export function logColumnWhy({ why, unitWhy }: Pick<LogColumn, "why" | "unitWhy">): string {
  return [columnReasons[why], ...(unitWhy === null || why === "not-used" ? [] : [unitReasons[unitWhy]])].join("; ");
}

const times = (count: number, one: string, many: string) =>
  `${count.toLocaleString("en")}${GLUE}${count === 1 ? one : many}`;

const at = ({ line, found }: LogDoubt) =>
  line === 0 ? "" : `, first in line ${line}${found === "" ? "" : `: ${found}`}`;

const doubtWords: Readonly<Record<LogDoubtCode, (doubt: LogDoubt, name: string, what: string) => string>> =
  Object.freeze({
    "column-by-figures": (_, name, what) => `${name} is taken for ${what} by its figures alone. Check it.`,
    "unit-guessed": ({ found, instead }, name, what) =>
      `${name} (${what}) is taken to be in ${found}; nothing in the file says so.${instead === "" ? "" : ` It might be in ${instead}.`}`,
    "unit-disagrees": ({ found, instead }, name, what) =>
      `${name} (${what}) says ${found}, but its figures look like ${instead}. Check its unit.`,
    "axis-guessed": ({ count }, name) =>
      `${name} is taken for the axis along the rocket, since it feels most; ${times(count, "other column holds", "other columns hold")} acceleration too.`,
    reversed: (_, name) => `${name} rests at minus 1 g: it is turned round, so that forward is positive.`,
    "several-columns": ({ count }, name, what) =>
      `${name} is taken for ${what}; ${times(count, "other column", "other columns")} might be it too.`,
    "count-not-time": (_, name) => `${name} rises by one each row: it may count rows and not the time.`,
    "height-or-altitude": (_, name) =>
      `${name} does not start near zero: it is taken for altitude above sea level, not height above the pad.`,
    "time-goes-back": (doubt) =>
      `The time goes back ${times(doubt.count, "time", "times")}${at(doubt)}. The instrument may have started anew.`,
    "rows-skipped": (doubt) =>
      `${times(doubt.count, "line has", "lines have")} no time and ${doubt.count === 1 ? "is" : "are"} passed over${at(doubt)}.`,
    "cells-unread": (doubt, name) =>
      `${name} holds ${times(doubt.count, "cell", "cells")} that ${doubt.count === 1 ? "is no number" : "are no numbers"}${at(doubt)}.`,
    "figures-beyond": ({ count }, name, what) =>
      `${name} (${what}) holds ${times(count, "figure", "figures")} beyond all bounds; ${count === 1 ? "it is" : "they are"} passed over.`,
    ragged: (doubt) => `${times(doubt.count, "row ends", "rows end")} before the last column${at(doubt)}.`,
    "rows-too-long": (doubt) =>
      `${times(doubt.count, "row has", "rows have")} more cells than the file has columns${at(doubt)}. Look whether a number was parted there.`,
    "too-many-marks": (_, name) => `${name} changes too often to be marks: none are taken from it.`,
  });

/** A column as it is called: its heading in quotes, else its number. */
export function logColumnName(columns: readonly Pick<LogColumn, "index" | "heading">[], index: number): string {
  const heading = columns.find((each) => each.index === index)?.heading ?? "";
  return heading === "" ? `Column${GLUE}${index + 1}` : `"${heading}"`;
}

/** One doubt as a sentence. */
export function logDoubtSentence(doubt: LogDoubt, columns: readonly Pick<LogColumn, "index" | "heading">[]): string {
  const name = doubt.column === null ? "The file" : logColumnName(columns, doubt.column);
  return doubtWords[doubt.code](doubt, name, doubt.quantity === null ? "" : quantities[doubt.quantity]);
}

/** What was read: `1,771 rows in lines from 2, columns parted by commas.` */
export function logReadSentence({ rows, layout }: Pick<ReadLogRecord, "rows" | "layout">): string {
  const commas = layout.decimal === "," ? ", with decimal commas" : "";
  return `${times(rows, "row", "rows")} from line ${layout.firstLine} on, columns parted by ${delimiterWords[layout.delimiter]}${commas}.`;
}

const delimiterWords: Readonly<Record<ReadLogRecord["layout"]["delimiter"], string>> = Object.freeze({
  ",": "commas",
  ";": "semicolons",
  "\t": "tabs",
  "|": "bars",
  " ": "blanks",
});

type FaultWords = (fault: Fault) => string;

const faultWords: Readonly<Record<string, FaultWords>> = Object.freeze({
  "file-too-large": ({ found, accepted }) => `The file is too large: ${found}; ${accepted} are read.`,
  "empty-file": () => "The file is empty. Export the flight from the instrument again.",
  "not-text": () => "The file is no text. Export the flight as CSV: lines of figures.",
  "too-many-rows": ({ found, accepted }) => `The file is too long: ${found}; ${accepted} are read. Cut out the flight.`,
  "line-too-long": () => "The file has no line ends that could part its rows.",
  "one-column": () => "The file has one column only. It takes a column of the time and one of what was measured.",
  "no-figures": ({ path }) =>
    path === "" ? "The file holds no rows of figures." : `The column for ${pathWords(path)} holds no figures.`,
  "no-time": () => "No column of the time was found: one whose figures rise. Say which it is.",
  "nothing-of-flight": () =>
    "No column of height, altitude, pressure or acceleration was found. Say which column holds one of them.",
  "too-few-rows": ({ found, accepted }) => `The file is too short: ${found}; ${accepted} are needed.`,
  "time-stands": () => "The time is the same in every row. Say which column holds the time.",
  "time-runs-back": ({ found }) => `The time runs backwards: ${found}. Say which column holds the time.`,
  "nothing-moves": ({ path }) => `The column for ${pathWords(path)} holds the same figure in every row: nothing flew.`,
  "comma-parts-columns": ({ found, accepted }) =>
    `The file has ${found}. A comma parts its columns and seems to stand in its numbers, too. Export the flight anew: ${accepted}. If the cells are columns of their own, give each a heading.`,
  "blank-parts-columns": ({ found, accepted }) =>
    `The file has ${found}. A blank parts its columns and seems to stand in its numbers, too. Export the flight anew: ${accepted}. If the cells are columns of their own, give each a heading.`,
  "column-missing": ({ path, found, accepted }) =>
    `The column for ${pathWords(path)} is not in this file: ${found}. It takes ${accepted}.`,
  "unit-unknown": ({ path, found, accepted }) =>
    `The unit for ${pathWords(path)} is not known: ${found}; ${accepted} is accepted.`,
});

function pathWords(path: string): string {
  const quantity = path.split(".")[1] ?? "";
  return own<string>(quantities, quantity) ?? quantity;
}

/** A fault of a log as sentences: what is wrong and what to do. */
export function logFaultSentence(fault: Fault): string {
  const words = own(faultWords, fault.code);
  return words === undefined ? `${fault.found} found; ${fault.accepted} is accepted.` : words(fault);
}
