import { crossing, trapezoidCorners } from "../normal-force/planform.js";
import type { FinShape } from "../rocket.js";

/** A stretch along the flow: where it begins and ends [m]. */
export type Chord = readonly [from: number, to: number];

/**
 * What of a fin lies along the flow at a spanwise station.
 *
 * @param shape one fin's outline [m]
 * @returns the chords at a distance from the root [m], ≥ 0, from front to back: none beyond the tip, several across a notch
 * @example
 * finChords({ kind: "trapezoid", root: 0.2, tip: 0.1, span: 0.1, sweep: 0.1 })(0.05); // [[0.05, 0.2]]
 */
export function finChords(shape: FinShape): (y: number) => readonly Chord[] {
  if (shape.kind === "ellipse") {
    const { root, span } = shape;
    return (y) => {
      if (y >= span) return [];
      const half = (root / 2) * Math.sqrt(1 - (y / span) ** 2);
      return [[root / 2 - half, root / 2 + half]];
    };
  }
  const corners = shape.kind === "trapezoid" ? trapezoidCorners(shape) : shape.points;
  return (y) => {
    const at: number[] = [];
    for (let k = 0; k < corners.length; k++) {
      const from = corners[k]!;
      const to = corners[k + 1] ?? corners[0]!;
      if (from[1] <= y !== to[1] <= y) at.push(crossing(from, to, y));
    }
    if (at.length === 2) return [[Math.min(at[0]!, at[1]!), Math.max(at[0]!, at[1]!)]];
    at.sort((a, b) => a - b);
    const chords: Chord[] = [];
    for (let k = 0; k + 1 < at.length; k += 2) chords.push([at[k]!, at[k + 1]!]);
    return chords;
  };
}
