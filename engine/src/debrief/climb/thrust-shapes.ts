import { type Climb, gridStep } from "./climb-flights.js";

/** Half waves over the burn by which a thrust may be of another shape. */
const waves = [1, 2] as const;

const gravity = 9.80665;

/**
 * What thrusts of another shape but the same impulse do to a climb, by a unit of each wave: the thrust's share of the
 * acceleration, waved and integrated twice; drag is not felt back.
 *
 * @param burn from lift-off to the end of the burn [s]
 * @returns heights on the climb's grid, one series a wave
 */
export function thrustShapes(climb: Climb, burn: number): Climb[] {
  const last = Math.min(climb.length - 2, Math.round(burn / gridStep));
  const push = (i: number): number =>
    i < 1 ? 0 : Math.max(0, (climb[i + 1]! - 2 * climb[i]! + climb[i - 1]!) / gridStep ** 2 + gravity);
  let whole = 0;
  for (let i = 0; i <= last; i++) whole += push(i);
  return waves.map((wave) => {
    const waved = (i: number): number => Math.cos((wave * Math.PI * i) / Math.max(1, last)) * push(i);
    let more = 0;
    for (let i = 0; i <= last; i++) more += waved(i);
    const shape = new Float64Array(climb.length);
    let speed = 0;
    for (let i = 1; i < climb.length; i++) {
      shape[i] = shape[i - 1]! + speed * gridStep;
      if (i <= last && whole > 0) speed += (waved(i) - (more / whole) * push(i)) * gridStep;
    }
    return shape;
  });
}
