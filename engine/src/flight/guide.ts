import type { Derivatives } from "./integrate.js";
import { type FlightModel, massIn, type Stretch, thrustIn } from "./model.js";

/** Force along the guide at rest [N]: thrust less the weight's part along it. */
export function pullAtRest(model: FlightModel, stretch: Stretch, t: number): number {
  return thrustIn(stretch, t) - massIn(model, stretch, t).mass * model.gravityAt(0) * model.guideDirection[2];
}

/**
 * Motion along the guide: state is the way along it [m] and the speed [m/s].
 *
 * The wind is ignored, drag acts along the guide, nothing rubs.
 */
export function guideRates(model: FlightModel, stretch: Stretch): Derivatives {
  return (t, y, rates) => guideRatesAt(model, stretch, t, y, rates);
}

function guideRatesAt(model: FlightModel, stretch: Stretch, t: number, y: Float64Array, rates: Float64Array): void {
  const cosine = model.guideDirection[2];
  const way = y[0] as number;
  const speed = y[1] as number;
  const z = way * cosine;
  const air = model.airAt(z);
  const cd = model.drag(
    Math.abs(speed) / air.soundSpeed,
    (Math.abs(speed) * air.density) / air.viscosity,
    stretch.thrusting,
  );
  const drag = 0.5 * air.density * speed * Math.abs(speed) * cd * model.area;
  rates[0] = speed;
  rates[1] = (thrustIn(stretch, t) - drag) / massIn(model, stretch, t).mass - model.gravityAt(z) * cosine;
}
