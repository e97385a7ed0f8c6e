import type { Vec3 } from "../math/vec3.js";
import { shear } from "./aligned.js";
import { type FlightModel, massIn, type Stretch, thrustIn } from "./model.js";
import { trimAt } from "./settled.js";

/** What is left of the swing at one moment. */
export interface Swing {
  /** Amplitude of the axis about its trim, from angle and rate together [rad]; Infinity where the body is not stable. */
  readonly amplitude: number;
  /** Velocity that the rest of the swing will still add [m/s]. */
  readonly impulse: Vec3;
}

/**
 * Measures the swing that is left, and what it will still do to the path.
 *
 * With angle α and axis rate ω beyond trim, frozen coefficients give I dω/dt = −k α − c ω and V dφ/dt = a α + b ω for the
 * path's direction φ; integrated until the swing is gone: Δφ (1 + a c/(k V) − b/V) = a (I ω + c α)/(k V) − b α / V.
 * Handing over adds V Δφ to the velocity, so that the moment of the hand-over hardly matters.
 *
 * @source the pitching model's equations for small angles (derivation in docs/models.md)
 */
export function swingLeft(model: FlightModel, stretch: Stretch, t: number, y: Float64Array): Swing {
  const z = y[2]!;
  const wind = model.windAt(z);
  const through = [y[3]! - wind[0], y[4]! - wind[1], y[5]! - wind[2]] as const;
  const speed = Math.hypot(...through);
  const air = model.airAt(z);
  const trim = trimAt(model, stretch, {
    time: t,
    density: air.density,
    speed,
    mach: speed / air.soundSpeed,
    growth: 0,
  });
  if (trim.frequency === 0) return { amplitude: Number.POSITIVE_INFINITY, impulse: [0, 0, 0] };
  const [sx, sy] = shear(model, z);
  const pull = [-sx * y[5]!, -sy * y[5]!, -model.gravityAt(z)] as const;
  const alongPath = (pull[0] * through[0] + pull[1] * through[1] + pull[2] * through[2]) / (speed * speed);
  const axis = [y[6]!, y[7]!, y[8]!] as const;
  const spin = [y[9]!, y[10]!, y[11]!] as const;
  const axisRate = [
    spin[1] * axis[2] - spin[2] * axis[1],
    spin[2] * axis[0] - spin[0] * axis[2],
    spin[0] * axis[1] - spin[1] * axis[0],
  ] as const;

  const { mass } = massIn(model, stretch, t);
  const stiffness = trim.frequency ** 2;
  const perAngle = (thrustIn(stretch, t) + trim.slopeForce) / mass;
  const perRate = trim.momentForce / (mass * speed);
  const whole = 1 + (perAngle * trim.damping) / (stiffness * speed) - perRate / speed;
  let angleSquare = 0;
  let rateSquare = 0;
  const impulse: [number, number, number] = [0, 0, 0];
  for (let i = 0; i < 3; i++) {
    const turnRate = (pull[i]! - alongPath * through[i]!) / (speed + trim.resistance);
    const angle = axis[i]! - through[i]! / speed + trim.lag * turnRate;
    const rate = axisRate[i]! - turnRate;
    angleSquare += angle * angle;
    rateSquare += rate * rate;
    impulse[i] = ((perAngle * (rate + trim.damping * angle)) / stiffness - perRate * angle) / whole;
  }
  return { amplitude: Math.sqrt(angleSquare + rateSquare / stiffness), impulse };
}
