import type { Fitting } from "../rocket.js";
import { stagnationPressureRatio } from "./stagnation.js";

/** Drag coefficient and usual frontal area of what runs on the launch guide. */
export interface FittingData {
  /** On the frontal area, at low speed. */
  readonly cd: number;
  /** Usual frontal area [m²]; common practice, no source. */
  readonly frontalArea: number;
}

/**
 * Fittings by kind: a button 10 mm wide and 8 mm high, the ring of a lug 10 mm across, a guide 12 mm wide and 10 mm high.
 *
 * @source coefficients: S. F. Hoerner, Fluid-Dynamic Drag (1965), ch. V, sharp blocks on a wall 1.0 to 1.2, a lug's ring 1.2; memory
 */
export const fittingData: Readonly<Record<Fitting["kind"], FittingData>> = Object.freeze({
  "rail button": { cd: 1.1, frontalArea: 80e-6 },
  "launch lug": { cd: 1.2, frontalArea: 30e-6 },
  "rail guide": { cd: 1.1, frontalArea: 120e-6 },
});

/**
 * Drag of one fitting; it grows with the stagnation pressure.
 *
 * @param diameter reference diameter [m]
 * @param mach ≥ 0
 * @returns coefficient on the circle of the reference diameter
 * @source `fittingData`
 * @example
 * fittingDrag({ kind: "rail button", at: 1, frontalArea: 1e-4 }, 0.1, 0); // 0.0140056
 */
export function fittingDrag(fitting: Fitting, diameter: number, mach: number): number {
  const { cd, frontalArea } = fittingData[fitting.kind];
  const area = fitting.frontalArea ?? frontalArea;
  return (cd * area * stagnationPressureRatio(mach)) / ((Math.PI * diameter * diameter) / 4);
}
