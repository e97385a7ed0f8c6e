import type { Chord } from "./chords.js";

/** Stations across a box at which its share on the fin is taken, in its own width, with the box's length there as weight. */
const STATIONS = [-0.6, 0, 0.6] as const;
const STATION_WEIGHTS = STATIONS.reduce<number>((sum, at) => sum + 1 - Math.abs(at), 0);
/** Where the tip lies between two strips, so that grids of different size err alike. */
const TIP_INSET = 0.25;

/** What is cut into boxes. */
export interface Panel {
  /** Chords at a distance from the root [m]. */
  readonly chordsAt: (y: number) => readonly Chord[];
  /** Points of the edge (chordwise, spanwise) [m], enough to find how far it reaches along Mach lines. */
  readonly outline: readonly (readonly [chordwise: number, spanwise: number])[];
  /** [m] */
  readonly span: number;
  /** [m²] */
  readonly area: number;
}

/**
 * A fin and its mirror image beyond the root, cut into boxes along Mach lines.
 *
 * With x' = x/β the Mach lines are ξ = x' + y and η = x' − y; box (i, j) is one `size` wide in each. The panels are alike, so
 * only j ≤ i is filled: row-major, `count` columns.
 */
export interface BoxGrid {
  readonly count: number;
  /** [m] */
  readonly size: number;
  /** x' where the foremost box begins [m]. */
  readonly origin: number;
  /** Share of each box that lies on the fin, 0…1. */
  readonly covered: Float64Array;
}

/** How far a panel reaches along Mach lines: of x' − y the least, of x' + y the greatest [m]. */
export function reachAlongMachLines({ outline }: Panel, beta: number): readonly [first: number, last: number] {
  return [Math.min(...outline.map(([x, y]) => x / beta - y)), Math.max(...outline.map(([x, y]) => x / beta + y))];
}

/**
 * Cuts a fin into boxes along Mach lines.
 *
 * @param beta √(M² − 1), > 0
 * @param strips half boxes over the span, ≥ 1
 * @returns the grid; its shares change steadily with `beta`
 */
export function boxGrid(panel: Panel, beta: number, strips: number): BoxGrid {
  const [first, last] = reachAlongMachLines(panel, beta);
  const size = (2 * panel.span) / (strips + TIP_INSET);
  const count = Math.ceil((last - first) / size);
  const covered = new Float64Array(count * count);
  const widest = Math.min(count, strips + 2);
  for (let across = 0; across < widest; across++)
    for (const at of STATIONS) {
      const half = (1 - Math.abs(at)) / 2;
      const weight = 1 / STATION_WEIGHTS;
      for (const chord of panel.chordsAt((Math.abs(across + at) * size) / 2)) {
        const from = (chord[0] / beta - first) / size;
        const to = (chord[1] / beta - first) / size;
        const start = Math.max(0, Math.floor(from - half - (across + 1) / 2));
        for (let j = start; j + across < count; j++) {
          const centre = j + (across + 1) / 2;
          if (centre - half >= to) break;
          const inside = Math.min(to, centre + half) - Math.max(from, centre - half);
          if (inside > 0) covered[(j + across) * count + j]! += weight * inside;
        }
      }
    }
  return { count, size, origin: first, covered };
}

/** √(k + 1) − √k: by how much a box weighs at a corner k boxes downstream of it, along one family of Mach lines. */
export function boxInfluences(count: number): Float64Array {
  return Float64Array.from({ length: count }, (_, k) => Math.sqrt(k + 1) - Math.sqrt(k));
}
