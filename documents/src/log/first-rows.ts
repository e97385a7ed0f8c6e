import { shorten } from "../issue.js";
import { cellText, isBlankLine, isComment, LONGEST_LINE, lineEnd, newCells, nextLine, splitLine } from "./log-lines.js";
import type { LogTable } from "./log-table.js";
import type { LogPreview } from "./log-types.js";

const SHOWN = 12;
const LONGEST_CELL = 60;

/** The first rows as they stand, remarks and blank lines left out. */
export function firstRows({ bytes, end, layout, headings }: LogTable): LogPreview["lines"] {
  const cells = newCells();
  const rows: { line: number; cells: string[] }[] = [];
  let at = headings.rowsFrom;
  const sign = layout.delimiter.charCodeAt(0);
  for (let line = layout.firstLine; at < end && rows.length < SHOWN; line++) {
    const stop = lineEnd(bytes, at, end);
    if (!isBlankLine(bytes, at, stop) && !isComment(bytes, at, stop, sign) && stop - at <= LONGEST_LINE) {
      splitLine(bytes, at, stop, sign, cells);
      rows.push({
        line,
        cells: Array.from({ length: cells.count }, (_, c) => shorten(cellText(bytes, cells, c), LONGEST_CELL)),
      });
    }
    at = nextLine(bytes, stop, end);
  }
  return rows;
}
