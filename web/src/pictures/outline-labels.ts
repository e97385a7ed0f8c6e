import { type Anchor, type Box, type LabelLine, labelBox, overlap, type Spot } from "./place-labels.js";

/** A tick on the ruler that wants its label below. */
export interface RulerMark {
  /** [px] */
  readonly x: number;
  readonly lines: readonly LabelLine[];
}

/** Where a label stands, and how far down its tick goes. */
export interface PlacedMark {
  readonly spot: Spot;
  readonly tickTo: number;
}

const anchors: readonly Anchor[] = ["end", "start", "middle"];

interface Choice {
  readonly row: number;
  readonly anchor: Anchor;
  readonly spot: Spot;
  readonly box: Box;
  readonly tickTo: number;
}

/**
 * Puts labels under their ticks so that none covers another or is crossed by another's tick: they step down where they must.
 *
 * @param marks ticks, at most four
 * @param top where the first row begins [px]
 * @param step from row to row [px]
 * @param width of the picture [px]
 * @param taken what stands in the rows already
 * @returns one place for each mark, in the same order
 */
export function labelMarks(
  marks: readonly RulerMark[],
  { top, step, width, taken }: { top: number; step: number; width: number; taken: readonly Box[] },
): readonly PlacedMark[] {
  const rows = marks.length + 1;
  const bounds: Box = { left: 0, top: 0, right: width, bottom: Number.POSITIVE_INFINITY };
  const choices = marks.map((mark) => choicesFor(mark, rows, top, step));
  let best: readonly Choice[] = [];
  let least = Number.POSITIVE_INFINITY;
  const search = (chosen: readonly Choice[]): void => {
    const i = chosen.length;
    if (i === marks.length) {
      const cost = costOf(chosen, marks, bounds, taken);
      if (cost < least) [best, least] = [chosen, cost];
      return;
    }
    for (const choice of choices[i] ?? []) search([...chosen, choice]);
  };
  search([]);
  return best.map(({ spot, tickTo }) => ({ spot, tickTo }));
}

function choicesFor({ x, lines }: RulerMark, rows: number, top: number, step: number): readonly Choice[] {
  const size = lines[0]?.size ?? 0;
  return Array.from({ length: rows }, (_, row) =>
    anchors.map((anchor): Choice => {
      const aside = anchor === "end" ? -6 : anchor === "start" ? 6 : 0;
      const y = top + row * step + size * (anchor === "middle" ? 1.15 : 0.9);
      const spot = { x: x + aside, y, anchor };
      const tickTo = anchor === "middle" ? y - size : y + size * 0.2;
      return { row, anchor, spot, box: labelBox(lines, spot), tickTo };
    }),
  ).flat();
}

/** A tick reaches from above the rows to its own label. */
function tickBox(x: number, tickTo: number): Box {
  return { left: x - 3, right: x + 3, top: 0, bottom: tickTo };
}

function costOf(chosen: readonly Choice[], marks: readonly RulerMark[], bounds: Box, taken: readonly Box[]): number {
  let cost = 0;
  chosen.forEach(({ box, row, anchor }, i) => {
    const size = (box.right - box.left) * (box.bottom - box.top);
    const outside = size - overlap(box, bounds);
    cost += row * 10 + (anchor === "middle" ? 4 : 0) + (outside > 0.5 ? 1000 + outside : 0);
    // labels lean away from the middle of the picture's ticks
    if (marks.length > 1 && i === 0 && anchor !== "end") cost += 2;
    if (marks.length > 1 && i === marks.length - 1 && anchor !== "start") cost += 2;
    for (const each of taken) cost += overlap(box, each) > 0 ? 500 + overlap(box, each) : 0;
    chosen.forEach((other, j) => {
      if (j > i) cost += overlap(box, other.box) > 0 ? 1000 + overlap(box, other.box) : 0;
      if (j !== i) cost += overlap(box, tickBox(marks[j]?.x ?? 0, other.tickTo)) > 0 ? 300 : 0;
    });
  });
  return cost;
}
