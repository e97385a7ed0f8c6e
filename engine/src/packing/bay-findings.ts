import { bayVolume, type ChargeCaveat, chargeCaveats, chargeForPressure, usualPressures } from "./ejection-charge.js";
import { judgeMotorCharge, type MotorCharge, type MotorChargeJudgement } from "./motor-charge.js";
import type { EjectionBay } from "./packing-inputs.js";
import { type NeededCharge, neededCharge, type Separation, separationOf } from "./separation.js";
import { type PinsLoad, type ShearPinCaveat, shearPinCaveats, shearPinsLoad } from "./shear-pins.js";

/** What parts a bay, and with how much powder. */
export interface BayFindings {
  /** [m³] */
  readonly volume: number;
  /** Loads of its pins; null where it has none. */
  readonly pins: PinsLoad | null;
  /** Null where the holding force is not known: neither pins nor friction given, or a pin of unknown size. */
  readonly separation: Separation | null;
  readonly needed: NeededCharge;
  /** Charges that make the usual pressures [kg]. */
  readonly usualCharges: { readonly least: number; readonly usual: number; readonly most: number };
  /** Null for a motor without a charge. */
  readonly motorCharge: MotorChargeJudgement | null;
  readonly caveats: readonly (ChargeCaveat | ShearPinCaveat)[];
}

/**
 * Charge, pins and the motor's own charge of one bay.
 *
 * Pins count with their stress area: what to expect, not the least that they bear.
 *
 * @param bay its size and what holds it shut
 * @param known the motor's charge, where it has one; push over holding force
 * @source `chargeForPressure`, `shearPins`, `usualPressures`
 * @example
 * bayFindings({ diameter: 0.072, length: 0.25, pins: [{ size: "2-56", count: 2 }] }, {}).separation?.holding; // 257.54428
 */
export function bayFindings(
  bay: EjectionBay,
  { motorCharge, margin }: { readonly motorCharge?: MotorCharge | undefined; readonly margin?: number },
): BayFindings {
  const volume = bayVolume(bay);
  const pins = bay.pins === undefined || bay.pins.length === 0 ? null : shearPinsLoad(bay.pins);
  const holding = holdingForce(pins, bay.friction);
  const separation =
    holding === null ? null : separationOf({ bay, holding, ...(margin === undefined ? {} : { margin }) });
  const needed = neededCharge(bay, separation);
  const charge = (pressure: number) => chargeForPressure({ pressure, volume });
  return {
    volume,
    pins,
    separation,
    needed,
    usualCharges: {
      least: charge(usualPressures.least),
      usual: charge(usualPressures.usual),
      most: charge(usualPressures.most),
    },
    motorCharge: motorCharge === undefined ? null : judgeMotorCharge({ bay, motorCharge, needed, separation }),
    caveats: pins === null ? chargeCaveats : [...chargeCaveats, ...shearPinCaveats],
  };
}

/** Pins and friction together [N]; null where it cannot be known. */
function holdingForce(pins: PinsLoad | null, friction: number | undefined): number | null {
  if (pins === null) return friction ?? null;
  return pins.total === undefined ? null : pins.total.stress + (friction ?? 0);
}
