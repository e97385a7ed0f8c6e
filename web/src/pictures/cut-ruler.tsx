import type { ReactNode } from "react";
import type { RulerMark } from "./cut-geometry.js";
import { labelEnds, type MiddleLabel } from "./delay-axis.js";

/** A ruler under the grain, with the cut's end marked on it. */
export function CutRuler(props: {
  readonly marks: readonly RulerMark[];
  /** Share of the grain to px. */
  readonly x: (share: number) => number;
  /** The ruler's edge, and from where the mark of the cut comes down [px]. */
  readonly y: number;
  readonly from: number;
  readonly at: number;
  /** What is written at the cut's end. */
  readonly words: string;
  /** Lines beside the ruler. */
  readonly names: readonly string[];
  readonly grow: number;
}): ReactNode {
  const { marks, x, y, from, at, words, names, grow } = props;
  const mine = { mid: x(at), words, size: 13 * grow, strong: true };
  const figures = marks
    .filter((mark) => mark.words !== null)
    .map((mark) => ({ mid: x(mark.at), words: mark.words ?? "", size: 12 * grow }));
  return (
    <>
      <line className="axis" x1={x(0)} y1={y} x2={x(1)} y2={y} />
      {marks.map((mark) => (
        <line key={mark.at} className="axis" x1={x(mark.at)} y1={y} x2={x(mark.at)} y2={y + (mark.long ? 9 : 5)} />
      ))}
      {rulerFigures(figures, mine).map(({ mid, words: figure }) => (
        <text key={figure} className="tick" x={mid} y={y + 22 * grow} textAnchor="middle">
          {figure}
        </text>
      ))}
      <line className="mark" x1={x(at)} y1={from} x2={x(at)} y2={y + 9} />
      <text className="value" x={mine.mid} y={y + 22 * grow} textAnchor="middle">
        {words}
      </text>
      {names.map((name, i) => (
        <text key={name} className="tick" x={x(0) - 16} y={y + 9 + i * 14 * grow} textAnchor="end">
          {name}
        </text>
      ))}
    </>
  );
}

/** Least distance between two figures [px]. */
const APART = 5;

function touch(a: MiddleLabel, b: MiddleLabel): boolean {
  const [one, other] = [labelEnds(a), labelEnds(b)];
  return one[0] < other[1] + APART && other[0] < one[1] + APART;
}

/**
 * The figures that stand beside the cut's own: both ends, and as many between as do not touch, evenly.
 *
 * @param figures along the ruler
 * @param mine the cut's own, always written
 */
export function rulerFigures(figures: readonly MiddleLabel[], mine: MiddleLabel): readonly MiddleLabel[] {
  const kept = [figures[0], figures.at(-1)].filter((each) => each !== undefined && !touch(each, mine)) as MiddleLabel[];
  const ends = kept.length === 2 && kept[0] && kept[1] && touch(kept[0], kept[1]) ? kept.slice(0, 1) : kept;
  for (let stride = 1; stride < figures.length; stride += 1) {
    const between = figures.filter(
      (each, i) => i % stride === 0 && !ends.includes(each) && [mine, ...ends].every((other) => !touch(each, other)),
    );
    if (between.every((each, i) => i === 0 || !touch(each, between[i - 1] ?? mine))) return [...ends, ...between];
  }
  return ends;
}
