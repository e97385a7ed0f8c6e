import type { UnitSystem } from "@delaywright/documents";
import type { ReactNode } from "react";
import { amount, SPACE } from "./figures.js";
import { labelMarks } from "./outline-labels.js";
import type { OutlineProps } from "./outline-props.js";
import type { PictureRoom } from "./picture.js";
import { type Box, type LabelLine, labelBox, textWidth } from "./place-labels.js";
import { isFigure, type Scale, ticksOf } from "./scale.js";

/** A tick on the ruler with its words. */
export interface Mark {
  readonly name: string;
  readonly at: number;
  readonly note: string;
}

/** The ticks that are known, from the nose on. */
export function marksOf({ balanceWithoutMotor, balanceReady, cp, notes = {} }: OutlineProps): readonly Mark[] {
  const marks = [
    { name: "balance", at: balanceWithoutMotor, note: notes.balance ?? "no motor" },
    { name: "ready", at: balanceReady, note: notes.ready ?? "" },
    { name: "CP", at: cp, note: notes.cp ?? "computed" },
  ];
  return marks.filter((mark): mark is Mark => isFigure(mark.at)).sort((a, b) => a.at - b.at);
}

/** Distance from the ready balance to the CP in calibres; null where one is missing. */
export function calibresOf({ balanceReady, cp, diameter }: OutlineProps): number | null {
  if (!isFigure(balanceReady) || !isFigure(cp) || !(diameter > 0)) return null;
  return (cp - balanceReady) / diameter;
}

function calibreWords(calibres: number): string {
  return `${calibres.toFixed(1).replace("-", "\u2212")}${SPACE}cal`;
}

/** What the outline is measured by: millimetres or inches. */
export function Ruler(props: { x: Scale; y: number; unit: number; units: UnitSystem; grow: number }): ReactNode {
  const { x, y, unit, units, grow } = props;
  const room = x.end - x.start;
  const [from, to] = [x.from / unit, x.to / unit];
  const fine = ticksOf(from, to, Math.max(2, Math.floor(room / 12)));
  const word = textWidth(`${Math.round(to)} mm`, 12 * grow);
  const worded = ticksOf(from, to, Math.max(1, Math.floor(room / (1.6 * word))));
  const isWorded = (tick: number): boolean => worded.some((each) => Math.abs(each - tick) < 1e-6 * Math.max(1, to));
  const step = (worded[1] ?? to) - (worded[0] ?? 0);
  // the last word carries the unit and ends with the ruler: a word too close before it is left out
  const words = [
    ...worded.filter((tick) => x(tick * unit) < x.end - Math.max(1.3 * word, 0)),
    Math.round(to * 100) / 100,
  ];
  return (
    <g className="outline-ruler" data-step={step}>
      <line x1={x.start} y1={y} x2={x.end} y2={y} className="axis" />
      {[...new Set([...fine, ...worded])].map((tick) => (
        <line
          key={tick}
          x1={x(tick * unit)}
          y1={y}
          x2={x(tick * unit)}
          y2={y + (isWorded(tick) ? 9 : 5) * grow}
          className="axis"
        />
      ))}
      {words.map((tick, i) => (
        <text
          key={tick}
          x={x(tick * unit)}
          y={y + 22 * grow}
          className="tick"
          textAnchor={i === words.length - 1 ? "end" : tick * unit <= x.from + 1e-9 ? "start" : "middle"}
        >
          {i === words.length - 1 ? `${tick}${SPACE}${units === "metric" ? "mm" : "in"}` : tick}
        </text>
      ))}
    </g>
  );
}

/** The margin between two ticks, and the words of all ticks, under the ruler. */
export function rowsBelow(
  props: OutlineProps,
  marks: readonly Mark[],
  x: Scale,
  ruler: number,
  { width, grow }: PictureRoom,
): { readonly ticks: readonly number[]; readonly words: ReactNode; readonly bottom: number } {
  const { balanceReady, cp, units } = props;
  const top = ruler + 30 * grow;
  const [value, tick] = [13 * grow, 12 * grow];
  const calibres = calibresOf(props);
  const margin =
    calibres === null || !isFigure(balanceReady) || !isFigure(cp)
      ? null
      : marginOf([x(balanceReady), x(cp)], top + 15 * grow, calibreWords(calibres), tick, width);
  const labels = marks.map(({ name, at, note }) => {
    const lines: LabelLine[] = [{ words: `${name} ${amount(at, "length", units)}`, size: value, strong: true }];
    if (note !== "") lines.push({ words: note, size: tick });
    return { x: x(at), lines };
  });
  const taken: readonly Box[] = margin === null ? [] : [margin.box];
  const placed = labelMarks(labels, { top, step: 33 * grow, width, taken });
  const ticks = placed.map(({ tickTo }) => Math.max(tickTo, margin === null ? 0 : top + 20 * grow));
  const bottom = Math.max(
    top,
    ...placed.map(({ spot }, i) => labelBox(labels[i]?.lines ?? [], spot).bottom),
    margin === null ? 0 : margin.y + 6,
  );
  const words = (
    <>
      {margin && (
        <g className="outline-margin">
          <line x1={margin.from} y1={margin.y} x2={margin.to} y2={margin.y} className="thin" />
          <text x={margin.x} y={margin.textY} className="tick halo" textAnchor={margin.anchor}>
            {margin.words}
          </text>
        </g>
      )}
      {placed.map(({ spot }, i) =>
        labels[i]?.lines.map((line, row) => (
          <text
            key={line.words}
            x={spot.x}
            y={spot.y + row * tick * 1.25}
            className={row === 0 ? "value halo" : "tick halo"}
            textAnchor={spot.anchor}
          >
            {line.words}
          </text>
        )),
      )}
    </>
  );
  return { ticks, words, bottom: bottom + 2 };
}

/** The line between two ticks with its words: on it where they fit between, else under the ruler beside it. */
function marginOf([a, b]: readonly [number, number], y: number, words: string, size: number, width: number) {
  const [from, to] = [Math.min(a, b), Math.max(a, b)];
  const wide = textWidth(words, size);
  const between = wide + 8 < to - from;
  const rightward = to + 6 + wide < width;
  const x = between ? (from + to) / 2 : rightward ? to + 6 : from - 6;
  const anchor = between ? ("middle" as const) : rightward ? ("start" as const) : ("end" as const);
  const textY = between ? y - 4 : y + size * 0.35;
  const line = labelBox([{ words, size }], { x, y: textY, anchor });
  const box: Box = {
    left: Math.min(from, line.left),
    right: Math.max(to, line.right),
    top: line.top,
    bottom: Math.max(y + 2, line.bottom),
  };
  return { from, to, x, y, textY, anchor, words, box };
}
