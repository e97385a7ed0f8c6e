import { finPlanform, trapezoidCorners } from "../normal-force/planform.js";
import type { FinEdge, FinShape } from "../rocket.js";
import { type BoxGrid, boxGrid, type Panel, reachAlongMachLines } from "./box-grid.js";
import { type Chord, finChords } from "./chords.js";
import { supersonicLift } from "./lift.js";
import { thicknessDrag } from "./thickness.js";

/** Boxes along a Mach line over the whole fin, fewest and most; half as many for the second grid from which the error is taken away. */
const BOXES = [32, 64] as const;
/** Boxes that the mean chord should have at least. */
const CHORD_BOXES = 8;
/** Points along the ellipse's edge. */
const EDGE_POINTS = 64;

function outlineOf(shape: FinShape): Panel["outline"] {
  if (shape.kind === "trapezoid") return trapezoidCorners(shape);
  if (shape.kind === "polygon") return shape.points;
  return Array.from({ length: EDGE_POINTS + 1 }, (_, i) => {
    const angle = (Math.PI * i) / EDGE_POINTS;
    return [(shape.root / 2) * (1 - Math.cos(angle)), shape.span * Math.sin(angle)] as const;
  });
}

function panelOf(shape: FinShape): Panel {
  const { span, area } = finPlanform(shape);
  return { chordsAt: finChords(shape), outline: outlineOf(shape), span, area };
}

function stripsFor(panel: Panel, beta: number): number {
  const [first, last] = reachAlongMachLines(panel, beta);
  const chord = panel.area / (panel.span * beta);
  const boxes = Math.min(BOXES[1], Math.max(BOXES[0], (CHORD_BOXES * (last - first)) / chord));
  return 2 * Math.max(2, Math.round((boxes * panel.span) / (last - first)));
}

/** What two grids of different size tend to as the boxes shrink: their errors are in proportion to the size. */
function towardsZero<T extends string>(
  strips: number,
  solve: (strips: number) => Readonly<Record<T, number>> & { readonly size: number },
): (key: T) => number {
  const [fine, coarse] = [solve(strips), solve(strips / 2)];
  return (key) => fine[key] + ((fine[key] - coarse[key]) * fine.size) / (coarse.size - fine.size);
}

/**
 * Lift of one flat fin beside its mirror image, over Mach number.
 *
 * @returns slope times area [m²/rad] and where it acts, from the root's leading edge [m], for Mach numbers > 1
 * @source `supersonicLift`, extrapolated to boxes of no size
 * @example
 * finLift({ kind: "trapezoid", root: 1, tip: 1, span: 1, sweep: 0 })(Math.SQRT2).slopeArea; // 3.03; linear theory: 3
 */
export function finLift(shape: FinShape): (mach: number) => { readonly slopeArea: number; readonly at: number } {
  const panel = panelOf(shape);
  return (mach) => {
    const beta = Math.sqrt(mach * mach - 1);
    const limit = towardsZero<"slopeArea" | "moment">(stripsFor(panel, beta), (strips) => {
      const grid = boxGrid(panel, beta, strips);
      const { slopeArea, at } = supersonicLift(grid, beta);
      return { slopeArea, moment: slopeArea * at, size: grid.size };
    });
    const slopeArea = limit("slopeArea");
    return { slopeArea, at: limit("moment") / slopeArea };
  };
}

/** Which edges of a fin are wedges: each reaches to the middle of the chord. */
export interface FinSection {
  readonly leading: FinEdge;
  readonly trailing: FinEdge;
}

const frontHalf = ([from, to]: Chord): Chord => [from, (from + to) / 2];
const rearHalf = ([from, to]: Chord): Chord => [(from + to) / 2, to];

/**
 * Wave drag of one fin with wedges for sharp edges, over Mach number, for a slope of 1.
 *
 * @returns coefficient times area [m²], for Mach numbers > 1; multiply by the facets' slope squared
 * @source `thicknessDrag`, extrapolated to boxes of no size
 * @example
 * const both = { leading: "sharp", trailing: "sharp" } as const;
 * finThicknessDrag({ kind: "trapezoid", root: 1, tip: 1, span: 1, sweep: 0 }, both)(Math.SQRT2); // 4.06; linear theory: 4
 */
export function finThicknessDrag(shape: FinShape, { leading, trailing }: FinSection): (mach: number) => number {
  const panel = panelOf(shape);
  const grid = (edge: FinEdge, half: (chord: Chord) => Chord, beta: number, strips: number): BoxGrid =>
    boxGrid({ ...panel, chordsAt: (y) => (edge === "sharp" ? panel.chordsAt(y).map(half) : []) }, beta, strips);
  return (mach) => {
    const beta = Math.sqrt(mach * mach - 1);
    return towardsZero<"drag">(stripsFor(panel, beta), (strips) => {
      const facing = grid(leading, frontHalf, beta, strips);
      return { drag: thicknessDrag(facing, grid(trailing, rearHalf, beta, strips)), size: facing.size };
    })("drag");
  };
}
