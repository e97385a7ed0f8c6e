import type { ColumnFigures } from "./column-figures.js";
import { type HeadingSays, headingSays } from "./heading-words.js";
import type { LogColumnReason, LogDoubt, LogQuantity } from "./log-types.js";
import type { Sample } from "./sample-columns.js";

/** A column that may be looked at: its heading and what its figures do. */
export interface Candidate {
  readonly index: number;
  readonly says: HeadingSays;
  /** Null where it holds no figures. */
  readonly figures: ColumnFigures | null;
  /** Cells that are not empty. */
  readonly filled: number;
  readonly values: Float64Array;
}

/** A column chosen for a quantity. */
export interface Chosen {
  readonly index: number;
  readonly why: LogColumnReason;
  readonly reversed?: boolean;
}

export type Choice = Map<LogQuantity, Chosen>;

/** A doubt about a column that is no more than a word. */
export function columnDoubt(
  code: LogDoubt["code"],
  column: number,
  quantity: LogQuantity,
  more: Partial<LogDoubt> = {},
) {
  return { code, column, quantity, found: "", instead: "", count: 0, line: 0, ...more };
}

/** Every column with its heading's words. */
export function candidates(
  sample: Sample,
  headings: readonly string[],
  figuresOf: (index: number) => ColumnFigures | null,
) {
  const count = Math.max(headings.length, sample.columns.length);
  return Array.from({ length: count }, (_, index): Candidate => {
    const column = sample.columns[index];
    const says = headingSays(headings[index] ?? "");
    const numeric = sample.numbers.some((each) => each.index === index);
    return {
      index,
      says,
      figures: numeric ? figuresOf(index) : null,
      filled: column?.filled ?? 0,
      values: column?.values ?? new Float64Array(0),
    };
  });
}

/** Takes the columns whose headings say what they hold, where their figures do not speak against it. */
export function matchHeadings(all: readonly Candidate[], choice: Choice, doubts: LogDoubt[]): void {
  const said = (quantity: LogQuantity) =>
    all.filter(({ says, figures }) => says.quantity === quantity && (quantity === "marks" || figures !== null));
  take("time", best(said("time"), risingBest));
  for (const quantity of ["pressure", "speed", "temperature", "battery", "marks"] as const)
    take(quantity, best(said(quantity), byRank));
  take("acceleration", best(said("acceleration"), alongAxis));
  levels(said("altitude"));

  function take(quantity: LogQuantity, found: readonly Candidate[]): void {
    const [first, ...others] = found;
    if (first === undefined) return;
    choice.set(quantity, { index: first.index, why: first.says.by === "unit" ? "heading-unit" : "heading-word" });
    if (others.length === 0 || first.says.rank > others[0]!.says.rank) return;
    const code = quantity === "acceleration" ? "axis-guessed" : "several-columns";
    doubts.push(columnDoubt(code, first.index, quantity, { count: others.length }));
  }

  /** Heights are above the pad where their heading says so, or where they start near zero. */
  function levels(found: readonly Candidate[]): void {
    const known = found.map((each) => ({ each, level: each.says.level ?? startsAt(each.figures!) }));
    for (const [quantity, level] of [
      ["height", "pad"],
      ["altitude", "sea"],
    ] as const) {
      const of = best(
        known.filter((one) => one.level === level).map(({ each }) => each),
        byRank,
      );
      take(quantity, of);
      const [first] = of;
      if (first !== undefined && first.says.level === null && quantity === "altitude")
        doubts.push(columnDoubt("height-or-altitude", first.index, quantity));
    }
  }
}

function startsAt({ start, least, most }: ColumnFigures): "pad" | "sea" {
  return Math.abs(start) <= Math.max(0.05 * (most - least), 3) ? "pad" : "sea";
}

function best(found: readonly Candidate[], worth: (each: Candidate) => number): readonly Candidate[] {
  return [...found].sort((a, b) => worth(b) - worth(a) || a.index - b.index);
}

const byRank = ({ says }: Candidate) => says.rank;
const risingBest = ({ says, figures }: Candidate) => says.rank - 10 * (figures?.falls ?? 1);

/** The axis along the rocket: by its heading, else the one that feels most. */
function alongAxis({ says, figures }: Candidate): number {
  const { lowest, most, start } = figures!;
  const felt = Math.max(most - start, start - lowest);
  return 10 * says.rank + felt / (1 + felt);
}
