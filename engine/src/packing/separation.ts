import {
  type BaySize,
  bayVolume,
  chargeForPressure,
  endForce,
  pressureForForce,
  usualPressures,
} from "./ejection-charge.js";

/**
 * Times the holding force that a charge should push with; own default, no source.
 *
 * Half as much again covers dry pins, which bear 28 % more than moist ones.
 */
export const defaultSeparationMargin = 1.5;

/** What a separation asks for. */
export interface Separation {
  /** That holds the bay shut [N]. */
  readonly holding: number;
  /** Times the holding force that the end is pushed with. */
  readonly margin: number;
  /** Rise over the air outside [Pa]. */
  readonly pressure: number;
  /** Black powder that makes it [kg]. */
  readonly charge: number;
}

/**
 * Pressure and charge that part a bay.
 *
 * The end must push with `margin` times the holding force. Holds as `chargeForPressure` does; a bay that was closed on the
 * ground and vents badly brings pressure of its own, which is not counted.
 *
 * @param joint the bay; the force that holds it shut, shear pins and friction together [N], ≥ 0; the margin, > 0
 * @returns [Pa], [kg]
 * @source force over the end's area, then `chargeForPressure`; memory
 * @example
 * separationOf({ bay: { diameter: 0.072, length: 0.25 }, holding: 257.54, margin: 1.5 }).pressure; // 94881.4
 */
export function separationOf({
  bay,
  holding,
  margin = defaultSeparationMargin,
}: {
  readonly bay: BaySize;
  readonly holding: number;
  readonly margin?: number;
}): Separation {
  const pressure = pressureForForce({ force: margin * holding, diameter: bay.diameter });
  return { holding, margin, pressure, charge: chargeForPressure({ pressure, volume: bayVolume(bay) }) };
}

/** Why a bay needs its pressure: the flyer's own figure, what parts it, the usual range's low end, or the usual figure. */
export type PressureBasis = "stated" | "separation" | "least-usual" | "usual";

/** The charge that a bay needs. */
export interface NeededCharge {
  readonly basis: PressureBasis;
  /** Rise over the air outside [Pa]. */
  readonly pressure: number;
  /** Black powder that makes it [kg]. */
  readonly charge: number;
  /** Push on the bay's end [N]. */
  readonly endForce: number;
}

/**
 * Charge that a bay needs: for the flyer's own pressure or, where that does not part it, for the separation.
 *
 * Without an own pressure the usual one holds; where the holding force is known, only the low end of the usual range.
 *
 * @param bay its size, and the pressure that the flyer wants [Pa]
 * @param separation what parts it; null where the holding force is not known
 * @source pressures: `usualPressures`; common practice, no source
 * @example
 * neededCharge({ diameter: 0.054, length: 0.2 }, null).basis; // "usual"
 */
export function neededCharge(
  bay: BaySize & { readonly pressure?: number },
  separation: Separation | null,
): NeededCharge {
  const { pressure, basis } = neededPressure(bay.pressure, separation);
  return {
    basis,
    pressure,
    charge: chargeForPressure({ pressure, volume: bayVolume(bay) }),
    endForce: endForce({ pressure, diameter: bay.diameter }),
  };
}

function neededPressure(
  stated: number | undefined,
  separation: Separation | null,
): { pressure: number; basis: PressureBasis } {
  const least =
    stated !== undefined
      ? ({ pressure: stated, basis: "stated" } as const)
      : separation !== null
        ? ({ pressure: usualPressures.least, basis: "least-usual" } as const)
        : ({ pressure: usualPressures.usual, basis: "usual" } as const);
  return separation !== null && separation.pressure > least.pressure
    ? { pressure: separation.pressure, basis: "separation" }
    : least;
}
