import type { FlownMark, FlownWindow } from "./flown-view.js";
import { textWidth } from "./place-labels.js";
import type { Scale } from "./scale.js";

/** A mark with the place of its words. */
export interface PlacedMark extends FlownMark {
  readonly time: number;
  readonly x: number;
  /** Row of its words, from 0 at the top. */
  readonly row: number;
  readonly anchor: "start" | "end";
  readonly words: string;
}

/** Marks within the window, their words in as few rows as keep them apart. */
export function placeMarks(
  marks: readonly FlownMark[],
  window: FlownWindow,
  x: Scale,
  grow: number,
): { readonly placed: readonly PlacedMark[]; readonly rows: number } {
  const ends: number[] = [];
  const inside = marks.flatMap((mark) => {
    const { time } = mark;
    return time !== null && time >= window.from && time <= window.to ? [{ ...mark, time }] : [];
  });
  // from right to left: words stand right of their line, so that each row is free up to the line of the next
  const placed = inside
    .toSorted((a, b) => b.time - a.time)
    .map((mark): PlacedMark => {
      const at = x(mark.time);
      const words = `${mark.word} ${mark.time.toFixed(window.to - window.from < 8 ? 2 : 1)}`;
      const wide = textWidth(words, 12 * grow, true) + 8;
      const anchor = at + wide > x.end ? "end" : "start";
      const [left, right] = anchor === "start" ? [at, at + wide] : [at - wide, at];
      let row = 0;
      while (row < ends.length && right > (ends[row] ?? 0)) row += 1;
      ends[row] = left;
      return { ...mark, x: at, row, anchor, words };
    });
  return { placed, rows: Math.max(1, ends.length) };
}
