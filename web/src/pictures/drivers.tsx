import { wordForInput } from "@delaywright/documents";
import type { Driver } from "@delaywright/engine";
import type { ReactNode } from "react";
import { type DriversOf, remedyFor, wholeOf } from "./drivers-words.js";
import { percent } from "./figures.js";
import { type Drawing, Picture } from "./picture.js";
import { textWidth } from "./place-labels.js";
import { within } from "./scale.js";
import type { Room } from "./use-width.js";
import "./drivers.css";

export interface DriversProps {
  readonly drivers: readonly Driver[];
  /** What the bars are shares of; left out: the time of the opening, the delay's own scatter among them. */
  readonly of?: DriversOf;
  /** Most bars, the largest first. */
  readonly most?: number;
  readonly state: "settling" | "settled" | "stale";
}

/** A bar: an input, its share 0…1 and what would narrow it. */
interface Row {
  readonly name: string;
  readonly share: number;
  readonly remedy: string;
}

/** Shares below this are not worth a bar. */
const LEAST_SHARE = 0.005;

/** The inputs that cause the spread, largest first. */
function rowsOf(drivers: readonly Driver[], of: DriversOf, most: number): readonly Row[] {
  return drivers
    .map((driver) => ({ input: driver.input, share: within(driver[of]?.total ?? 0, 0, 1) }))
    .filter(({ share }) => share > LEAST_SHARE)
    .sort((a, b) => b.share - a.share)
    .slice(0, most)
    .map(({ input, share }) => {
      const name = wordForInput(input);
      return { name: name.slice(0, 1).toUpperCase() + name.slice(1), share, remedy: remedyFor(input) };
    });
}

/** What drives the spread: bars with the remedy at their end. */
export function Drivers({ drivers, of = "timing", most = 4, state }: DriversProps): ReactNode {
  const rows = rowsOf(drivers, of, most);
  const said = rows.map(({ name, share, remedy }) => `${name} ${percent(share)}: ${remedy}.`).join(" ");
  const description =
    rows.length === 0 ? "Nothing is uncertain: there is no spread to share out." : `Shares of ${wholeOf(of)}. ${said}`;
  return (
    <Picture
      name="drivers"
      title="What drives the spread"
      description={description}
      draw={(room) => drawDrivers(rows, state, room)}
    />
  );
}

/** Widths that follow from the words: whether each bar has its words beside or above and below it. */
function columnsOf(rows: readonly Row[], { width, grow }: Room) {
  const names = Math.max(0, ...rows.map(({ name }) => textWidth(name, 13 * grow, true)));
  const remedies = Math.max(0, ...rows.map(({ remedy }) => textWidth(remedy, 12 * grow)));
  const left = Math.max(78 * grow, names + 12);
  const percents = textWidth("100 %", 13 * grow, true) + 12;
  const beside = width - left - percents - remedies - 12;
  if (beside >= 120) return { kind: "beside", left, full: Math.min(beside, 0.52 * (width - left)) } as const;
  if (left < 0.4 * width) return { kind: "below", left, full: width - left - percents } as const;
  return { kind: "above", left: 0, full: width - percents } as const;
}

function drawDrivers(rows: readonly Row[], state: DriversProps["state"], room: Room): Drawing {
  const { width, grow } = room;
  const { kind, left, full } = columnsOf(rows, room);
  const step = kind === "beside" ? 34 * grow : kind === "below" ? 46 * grow : 64 * grow;
  const first = rows[0];
  if (first === undefined) {
    const words = (
      <text x={0} y={20 * grow} className="tick">
        nothing is uncertain
      </text>
    );
    return { height: 28 * grow, marks: words };
  }
  const marks = rows.map(({ name, share, remedy }, i) => {
    const y = i * step + 6 + (kind === "above" ? 18 * grow : 0);
    const length = Math.max(1, (full * share) / first.share);
    const under = kind === "beside" ? y + 14 : y + 18 + 15 * grow;
    return (
      <g key={name}>
        <text x={0} y={kind === "above" ? y - 6 : y + 14} className="value">
          {name}
        </text>
        <rect x={left} y={y} width={length} height={18} className={i === 0 ? "bar first" : "bar"} />
        <text x={left + length + 6} y={y + 14} className="value">
          {percent(share)}
        </text>
        <text
          x={kind === "beside" ? width : left}
          y={under}
          className="tick"
          textAnchor={kind === "beside" ? "end" : "start"}
        >
          {remedy}
        </text>
      </g>
    );
  });
  return { height: rows.length * step + 4, marks: <g className={`drivers-${state}`}>{marks}</g> };
}
