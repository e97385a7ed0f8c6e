import { columnFigures } from "./column-figures.js";
import type { LogTable } from "./log-table.js";
import type { LogDoubt } from "./log-types.js";
import { matchFigures } from "./match-figures.js";
import { type Choice, candidates, matchHeadings } from "./match-headings.js";

/** Guesses what the columns of a log hold: by their headings, and where these are silent by what the figures do. */
export function matchColumns({ sample, headings }: LogTable, doubts: LogDoubt[]): Choice {
  const choice: Choice = new Map();
  const all = candidates(sample, headings.names, (index) => columnFigures(sample.columns[index]!, sample));
  matchHeadings(all, choice, doubts);
  matchFigures(all, sample.burst, choice, doubts);
  return choice;
}
