import { bridgeOverMach, SUPERSONIC_LIMIT } from "../normal-force/compressibility.js";
import { finPlanform } from "../normal-force/planform.js";
import type { FinEdge, FinShape } from "../rocket.js";
import { busemann } from "../supersonic/busemann.js";
import { type FinSection, finThicknessDrag } from "../supersonic/fin.js";
import { overMach } from "../supersonic/over-mach.js";
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

/** Drag of a rounded leading edge across the flow; a smooth cubic from Mach 0.8 to 1.2. */
const roundEdge = bridgeOverMach(
  (mach) => (1 - mach * mach) ** -0.417 - 1,
  (mach) => 1.214 - 0.502 / mach ** 2 + 0.1095 / mach ** 4,
  0.8,
  SUPERSONIC_LIMIT,
);

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
 * Wave drag of a thin fin whose sharp edges are wedges that reach to the middle of the chord.
 *
 * None below Mach 0.9; above 1.2 linear theory of the whole fin, with Busemann's second order in proportion; a smooth rise between. Square
 * and round edges are not wedges: `leadingEdgeDrag` and `trailingEdgeDrag` know their drag.
 *
 * @param thicknessRatio thickness over mean chord, 0…0.1
 * @returns coefficient on the area of one side, over Mach number
 * @source `finThicknessDrag`, `busemann`
 * @example
 * const both = { leading: "sharp", trailing: "sharp" } as const;
 * thicknessWaveDrag({ kind: "trapezoid", root: 1, tip: 1, span: 1, sweep: 0 }, both, 0.05)(Math.SQRT2); // 0.0101; Ackeret: 0.01
 */
export function thicknessWaveDrag(
  shape: FinShape,
  section: FinSection,
  thicknessRatio: number,
): (mach: number) => number {
  const facing = section.leading === "sharp" ? thicknessRatio : 0;
  const leaving = section.trailing === "sharp" ? thicknessRatio : 0;
  if (facing === 0 && leaving === 0) return () => 0;
  const { area } = finPlanform(shape);
  const unit = finThicknessDrag(shape, section);
  const wedges = (facing > 0 ? 1 : 0) + (leaving > 0 ? 1 : 0);
  /** What is left of plane flow. */
  const share = overMach((mach) => unit(mach) / (wedges * busemann(mach).first * area));
  const plane = (mach: number) => {
    const { first, second } = busemann(mach, thicknessRatio);
    return first * (facing ** 2 + leaving ** 2) + second * (facing ** 3 - leaving ** 3);
  };
  const rise = bridgeOverMach(
    () => 0,
    (mach) => share(mach) * plane(mach),
  );
  return (mach) => Math.max(0, rise(mach));
}
