import { machAtPressure, stagnationAcrossShock } from "./gas.js";

/**
 * Wave drag of a cone, which is the pressure coefficient on its surface.
 *
 * @param halfAngle [rad], 0…0.8
 * @param mach ≥ 1.2
 * @returns coefficient on the base area
 * @source E. L. Fleeman, Tactical Missile Design (2006), 2.4: (1.59 + 1.83/M²) θ^1.69; memory; held against Taylor-Maccoll cone
 * flow in `engine/reference/taylor-maccoll`
 * @example
 * waveDrag(Math.atan(0.5 / 3), 1.5); // 0.1145573
 */
export function waveDrag(halfAngle: number, mach: number): number {
  return (1.59 + 1.83 / (mach * mach)) * halfAngle ** 1.69;
}

/** Flow at the surface of a cone along the axis. */
export interface ConeSurface {
  /** Over the free stream's. */
  readonly pressure: number;
  readonly mach: number;
}

/**
 * Flow at the surface of a cone: pressure by `waveDrag`, Mach number by the stagnation pressure that its shock leaves.
 *
 * @param mach of the free stream, ≥ 1.2
 * @param halfAngle [rad]; below 0 the free stream
 * @source shock strength by the hypersonic small-disturbance angle, M² sin²σ = 1 + (γ + 1)/2 M² sin²θ; memory
 */
export function coneSurface(mach: number, halfAngle: number): ConeSurface {
  if (halfAngle <= 0) return { pressure: 1, mach };
  const square = mach * mach;
  const pressure = 1 + 0.7 * square * waveDrag(halfAngle, mach);
  const left = stagnationAcrossShock(Math.min(mach, Math.sqrt(1 + 1.2 * square * Math.sin(halfAngle) ** 2)));
  return { pressure, mach: machAtPressure(Math.min(1, (pressure * (1 + 0.2 * square) ** -3.5) / left)) };
}

/** Surface Mach number that a pointed start must leave. */
const LEAST_SURFACE_MACH = 1.05;
/** Steepest pointed start [rad]. */
const STEEPEST = (25 * Math.PI) / 180;

/**
 * Steepest cone that the flow still leaves supersonic, at most 25 degrees.
 *
 * @param mach ≥ 1.2
 * @returns half angle [rad]
 * @source `waveDrag` at the pressure of surface Mach number 1.05
 */
export function steepestStart(mach: number): number {
  const square = mach * mach;
  const pressure = ((1 + 0.2 * square) / (1 + 0.2 * LEAST_SURFACE_MACH ** 2)) ** 3.5;
  return Math.min(STEEPEST, ((pressure - 1) / (0.7 * square * waveDrag(1, mach))) ** (1 / 1.69));
}
