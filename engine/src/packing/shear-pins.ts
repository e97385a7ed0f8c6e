/** What the load of shear pins does not answer: whether something but the charge shears them. */
export type ShearPinCaveat = "drag-separation-not-computed" | "harness-jerk-not-computed";

/**
 * Holds for every load of this file: the share of it that drag separation at burnout or the harness's jerk would use is not
 * computed.
 */
export const shearPinCaveats: readonly ShearPinCaveat[] = Object.freeze([
  "drag-separation-not-computed",
  "harness-jerk-not-computed",
]);

/** Load at which nylon 6/6 pins shear, each cut through once [N]. */
export interface PinLoad {
  /** Through the thread's root: the least. */
  readonly root: number;
  /** Through its stress area: what to expect. */
  readonly stress: number;
  /** Through its stress area, with nylon that is dry as moulded: the most. */
  readonly dry: number;
}

/** One size of pin. */
export interface ShearPin {
  readonly size: string;
  /** Of the thread [m]. */
  readonly diameter: number;
  /** At the thread's root [m²]. */
  readonly rootArea: number;
  /** Tensile stress area [m²]. */
  readonly stressArea: number;
  readonly load: PinLoad;
}

/** Some pins of one size. */
export interface PinCount {
  /** Thread, for example `2-56`. */
  readonly size: string;
  /** ≥ 1. */
  readonly count: number;
}

const INCH = 0.0254;
/** Shear strength of nylon 6/6 [Pa]: 54 N/mm², a supplier's sheet; dry as moulded 69 N/mm², memory. */
const SHEAR_STRENGTH = 54e6;
const DRY_SHEAR_STRENGTH = 69e6;

function pin(size: string, inches: number, threadsPerInch: number): ShearPin {
  const diameter = inches * INCH;
  const pitch = INCH / threadsPerInch;
  const area = (depth: number) => (Math.PI / 4) * (diameter - depth * pitch) ** 2;
  const rootArea = area(1.299038);
  const stressArea = area(0.9743);
  const load = {
    root: rootArea * SHEAR_STRENGTH,
    stress: stressArea * SHEAR_STRENGTH,
    dry: stressArea * DRY_SHEAR_STRENGTH,
  };
  return Object.freeze({ size, diameter, rootArea, stressArea, load: Object.freeze(load) });
}

/**
 * Nylon 6/6 screws that serve as shear pins.
 *
 * Loads differ by a third with the nylon's make and moisture: a ground test decides.
 *
 * @source diameters and pitches: ASME B1.1, memory; shear strength 54 N/mm²: a fastener supplier's sheet
 */
export const shearPins: readonly ShearPin[] = Object.freeze([
  pin("2-56", 0.086, 56),
  pin("4-40", 0.112, 40),
  pin("6-32", 0.138, 32),
]);

/**
 * The pin of a size.
 *
 * @param size thread, for example `2-56`
 * @returns undefined for a size that `shearPins` does not list
 * @source `shearPins`
 * @example
 * shearPin("4-40")?.load.stress; // 210.17477
 */
export function shearPin(size: string): ShearPin | undefined {
  return shearPins.find((known) => known.size === size);
}

/** Load of all pins of a joint together. */
export interface PinsLoad {
  /** [N]; undefined where a size is not known. */
  readonly total: PinLoad | undefined;
  /** Sizes that are not known, each once. */
  readonly unknown: readonly string[];
  /** Sizes that are. */
  readonly known: readonly string[];
}

/**
 * Load at which all pins of a joint shear together.
 *
 * Each pin is cut through once and carries its share: pins that fit unevenly shear one after the other, at less.
 *
 * @param pins of the joint; none bear nothing
 * @source `shearPins`
 * @example
 * shearPinsLoad([{ size: "2-56", count: 2 }]).total?.stress; // 257.54428
 */
export function shearPinsLoad(pins: readonly PinCount[]): PinsLoad {
  const known = shearPins.map(({ size }) => size);
  const unknown = [...new Set(pins.map(({ size }) => size))].filter((size) => !known.includes(size));
  if (unknown.length > 0) return { total: undefined, unknown, known };
  const sum = (load: keyof PinLoad) =>
    pins.reduce((total, { size, count }) => total + count * (shearPin(size)?.load[load] ?? 0), 0);
  return { total: { root: sum("root"), stress: sum("stress"), dry: sum("dry") }, unknown, known };
}
