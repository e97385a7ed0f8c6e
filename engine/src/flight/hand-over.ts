import { shear } from "./aligned.js";
import type { FlightModel, Stretch } from "./model.js";
import { trimAt } from "./settled.js";

/**
 * The swing that is left [rad]: the amplitude of the axis about its trim, from angle and rate together.
 *
 * Infinite where the body is not stable, so that it never settles.
 */
export function swingLeft(model: FlightModel, stretch: Stretch, t: number, y: Float64Array): number {
  const z = y[2]!;
  const wind = model.windAt(z);
  const [ux, uy, uz] = [y[3]! - wind[0], y[4]! - wind[1], y[5]! - wind[2]];
  const speed = Math.hypot(ux, uy, uz);
  const air = model.airAt(z);
  const trim = trimAt(model, stretch, t, air.density, speed, speed / air.soundSpeed);
  if (trim.frequency === 0) return Number.POSITIVE_INFINITY;
  const [sx, sy] = shear(model, z);
  const g = [-sx * y[5]!, -sy * y[5]!, -model.gravityAt(z)] as const;
  const alongPath = (g[0] * ux + g[1] * uy + g[2] * uz) / (speed * speed);
  const turn = speed + trim.resistance;
  const axis = [y[6]!, y[7]!, y[8]!] as const;
  const spin = [y[9]!, y[10]!, y[11]!] as const;
  const axisRate = [
    spin[1] * axis[2] - spin[2] * axis[1],
    spin[2] * axis[0] - spin[0] * axis[2],
    spin[0] * axis[1] - spin[1] * axis[0],
  ];
  let angle = 0;
  let rate = 0;
  for (const [i, u] of [ux, uy, uz].entries()) {
    const turnRate = ((g[i] as number) - alongPath * u) / turn;
    angle += ((axis[i] as number) - u / speed + trim.lag * turnRate) ** 2;
    rate += ((axisRate[i] as number) - turnRate) ** 2;
  }
  return Math.sqrt(angle + rate / trim.frequency ** 2);
}

/** Amplitude of the swing below which the settled model takes over [rad]. Chosen by the test of what the hand-over costs. */
export const settledSwing = 0.006;
