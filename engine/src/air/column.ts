import { DRY_AIR_GAS_CONSTANT, HEAT_CAPACITY_RATIO, STANDARD_GRAVITY } from "./constants.js";
import type { Air } from "./field-air.js";
import { dynamicViscosity } from "./viscosity.js";

/** One layer of the standard atmosphere: temperature is linear in geopotential height from its base up. */
interface Layer {
  /** Geopotential altitude of the base [m]. */
  readonly base: number;
  /** Temperature at the base [K]. */
  readonly temperature: number;
  /** Change of temperature with geopotential height [K/m]. */
  readonly lapse: number;
}

const BASES_AND_LAPSES = [
  [0, -0.0065],
  [11_000, 0],
  [20_000, 0.001],
  [32_000, 0.0028],
  [47_000, 0],
  [51_000, -0.0028],
  [71_000, -0.002],
  // Where the standard's lower part ends; the temperature is held from here on, so that no height gives NaN.
  [84_852, 0],
] as const;

function standardLayers(): Layer[] {
  const layers: Layer[] = [];
  let temperature = 288.15;
  for (const [base, lapse] of BASES_AND_LAPSES) {
    const below = layers.at(-1);
    if (below) temperature += below.lapse * (base - below.base);
    layers.push({ base, temperature, lapse });
  }
  return layers;
}

/** The layers of the U.S. Standard Atmosphere, 1976, rising, with a last one at constant temperature above its lower part. */
export const STANDARD_LAYERS: readonly Layer[] = standardLayers();

/** Air over geopotential altitude in hydrostatic balance: the standard's temperatures, shifted, on an anchored pressure. */
interface ColumnInputs {
  /** Added to the standard's temperature at every height [K]. */
  readonly shift: number;
  /** Virtual over true temperature, the same at every height, ≥ 1; 1: dry. */
  readonly virtualFactor: number;
  /** Geopotential altitude at which the pressure is known [m]. */
  readonly anchorAltitude: number;
  /** Pressure there [Pa]. */
  readonly anchorPressure: number;
}

/**
 * Prepares a column of air; pressure is integrated in closed form within each layer.
 *
 * Below the first layer's base and above the last one's, those layers go on.
 *
 * @param inputs shift, humidity and anchor of the column
 * @returns a function of geopotential altitude [m] that gives the air there
 * @source U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562), eq. 23, 33a, 33b, 42, 50, 51
 */
export function airColumn(inputs: ColumnInputs): (altitude: number) => Air {
  const { shift, virtualFactor, anchorAltitude, anchorPressure } = inputs;
  const gasConstant = DRY_AIR_GAS_CONSTANT * virtualFactor;
  const layers = STANDARD_LAYERS.map((layer) => ({ ...layer, temperature: layer.temperature + shift }));

  // Pressure at `altitude` over the pressure at the base of its layer.
  const ratioInLayer = ({ base, temperature, lapse }: Layer, altitude: number) =>
    lapse === 0
      ? Math.exp((-STANDARD_GRAVITY * (altitude - base)) / (gasConstant * temperature))
      : (1 + (lapse * (altitude - base)) / temperature) ** (-STANDARD_GRAVITY / (gasConstant * lapse));

  // Pressure at each base over the pressure at the first.
  const baseRatios = [1];
  for (let i = 1; i < layers.length; i++) {
    baseRatios.push(baseRatios[i - 1]! * ratioInLayer(layers[i - 1]!, layers[i]!.base));
  }
  const layerAt = (altitude: number) => {
    let i = layers.length - 1;
    while (i > 0 && altitude < layers[i]!.base) i--;
    return i;
  };
  const ratio = (i: number, altitude: number) => baseRatios[i]! * ratioInLayer(layers[i]!, altitude);
  const basePressure = anchorPressure / ratio(layerAt(anchorAltitude), anchorAltitude);

  return (altitude) => {
    const i = layerAt(altitude);
    const { base, temperature: baseTemperature, lapse } = layers[i]!;
    const temperature = baseTemperature + lapse * (altitude - base);
    const pressure = basePressure * ratio(i, altitude);
    return {
      temperature,
      pressure,
      density: pressure / (gasConstant * temperature),
      soundSpeed: Math.sqrt(HEAT_CAPACITY_RATIO * gasConstant * temperature),
      viscosity: dynamicViscosity(temperature),
    };
  };
}
