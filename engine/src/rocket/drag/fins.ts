import { monotoneBridge } from "../normal-force/compressibility.js";
import type { FinEdge } from "../rocket.js";
import { baseDragCoasting } from "./base.js";
import { stagnationPressureRatio } from "./stagnation.js";

/** Mean pressure over a flat face as a share of the stagnation pressure; memory. */
const FLAT_FACE = 0.85;

/**
 * By how much the thickness of a fin raises its drag above that of its friction.
 *
 * @param thicknessRatio thickness over mean chord, 0…0.3
 * @returns factor ≥ 1
 * @source S. F. Hoerner, Fluid-Dynamic Drag (1965), ch. VI: 1 + 2 t/c + 60 (t/c)⁴
 * @example
 * finFormFactor(0.05); // 1.100375
 */
export function finFormFactor(thicknessRatio: number): number {
  return 1 + 2 * thicknessRatio + 60 * thicknessRatio ** 4;
}

const roundEdgeSubsonic = (mach: number) => (1 - mach * mach) ** -0.417 - 1;
const roundEdgeSupersonic = (mach: number) => 1.214 - 0.502 / mach ** 2 + 0.1095 / mach ** 4;

/** Drag of a rounded leading edge across the flow; linear from Mach 0.9 to 1, between the two laws' own ends. */
function roundEdge(mach: number): number {
  if (mach <= 0.9) return roundEdgeSubsonic(mach);
  if (mach >= 1) return roundEdgeSupersonic(mach);
  const start = roundEdgeSubsonic(0.9);
  return start + ((roundEdgeSupersonic(1) - start) * (mach - 0.9)) / 0.1;
}

/**
 * Pressure drag of a fin's leading edge.
 *
 * Square: a flat face. Round: none at low speed, rising near Mach 1. Sharp: none; its wave drag is `thicknessWaveDrag`.
 * Sweep takes away by the square of its cosine.
 *
 * @param sweep of the leading edge [rad]
 * @param mach ≥ 0
 * @returns coefficient on the edge's frontal area, span times thickness
 * @source round: J. S. Barrowman, thesis, 1967, section 4; square: share 0.85 of the stagnation pressure; both memory
 * @example
 * leadingEdgeDrag("square", 0, 0); // 0.85
 */
export function leadingEdgeDrag(edge: FinEdge, sweep: number, mach: number): number {
  const straight = Math.cos(sweep) ** 2;
  if (edge === "square") return straight * FLAT_FACE * stagnationPressureRatio(mach);
  return edge === "round" ? straight * roundEdge(mach) : 0;
}

/** Share of base drag that a trailing edge has; memory. */
const TRAILING_SHARE: Readonly<Record<FinEdge, number>> = { square: 1, round: 0.5, sharp: 0 };

/**
 * Base drag of a fin's trailing edge.
 *
 * @param mach ≥ 0
 * @returns coefficient on the edge's frontal area, span times thickness
 * @source the body's base drag on a square edge, half of it on a round one; memory
 * @example
 * trailingEdgeDrag("square", 0); // 0.12
 */
export function trailingEdgeDrag(edge: FinEdge, mach: number): number {
  return TRAILING_SHARE[edge] * baseDragCoasting(mach);
}

/**
 * Wave drag of a thin, sharp fin: none below Mach 0.9, linear theory from 1.2 on, a monotone rise between.
 *
 * @param thicknessRatio thickness over mean chord, 0…0.1
 * @returns coefficient on the area of one side, over Mach number
 * @source J. Ackeret's linear theory of the double wedge, 4 (t/c)²/β; memory
 * @example
 * thicknessWaveDrag(0.05)(Math.SQRT2); // 0.01
 */
export function thicknessWaveDrag(thicknessRatio: number): (mach: number) => number {
  const supersonic = (mach: number) => (4 * thicknessRatio ** 2) / Math.sqrt(mach * mach - 1);
  const bridge = monotoneBridge(0.9, 0, 0, 1.2, supersonic(1.2), 0);
  return (mach) => (mach <= 0.9 ? 0 : mach >= 1.2 ? supersonic(mach) : bridge(mach));
}
