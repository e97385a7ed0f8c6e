import { padTemperature } from "../../air/at-field.js";
import type { FieldAir } from "../../air/field-air.js";
import type { DrawnValues } from "../../flight/fast/draw.js";
import { drawnValues, varies } from "../../spread/drawn-values.js";
import { drawNormals, drawSize, flightInputsDrawn } from "../../spread/draws.js";
import type { Spread } from "../../spread/spread.js";

/** A day as it may have been: mass, air, wind and lean within what is not known of them. */
export interface Day {
  readonly change: (drawn: DrawnValues) => void;
  /** Factor on the heights that a barometer shows. */
  readonly shown: number;
}

/** Enough that the heights they can reach together are spanned: a fit may not tell apart what it was not shown. */
const count = 128;
const seed = 1;

/**
 * Days drawn from what is not known of the day as stated; none where all is known. Drag, impulse and burn time are fitted and are
 * not among it.
 */
export function daysLike(spread: Spread, air: FieldAir): Day[] {
  const unknown: Spread = {
    ...spread,
    dragScale: 0,
    totalImpulse: 0,
    burnTime: 0,
    delay: { seconds: 0, fraction: 0 },
    cutDepth: 0,
  };
  if (!varies(unknown)) return [];
  const pad = padTemperature(air);
  return Array.from({ length: count }, (_, draw) => {
    const z = drawNormals(seed, draw, new Float64Array(drawSize));
    const temperature = spread.temperature * z[flightInputsDrawn.indexOf("temperature")]!;
    return {
      change: (drawn) => drawnValues(unknown, z, drawn),
      // heights from pressure are reckoned with the temperature as stated
      shown: pad / (pad + temperature),
    };
  });
}
