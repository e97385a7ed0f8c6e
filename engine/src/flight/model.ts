import { fieldAir } from "../air/at-field.js";
import type { Air } from "../air/field-air.js";
import { fieldGravity } from "../air/gravity.js";
import type { Vec3 } from "../math/vec3.js";
import { type Burn, burnOf } from "../motor/burn.js";
import { prepareImpulse } from "../motor/impulse.js";
import { type BodyLift, bodyLift } from "../rocket/body-lift.js";
import { dragCoefficient } from "../rocket/drag-table.js";
import { airframeWithBallast, type MassState } from "../rocket/mass.js";
import type { Part } from "../rocket/normal-force/parts.js";
import { partsWithStatedCp } from "../rocket/normal-force/stated-cp.js";
import { drydenTurbulence, type Turbulence } from "../wind/turbulence.js";
import { windAt } from "../wind/wind-at.js";
import type { FlightInputs } from "./inputs.js";
import type { ResolvedFlightOptions } from "./options.js";

/** A stretch of time in which the thrust is linear. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  /** Thrust at `from` [N] and its change per second. */
  readonly thrust: number;
  readonly slope: number;
  /** Impulse spent at `from` [N s]. */
  readonly impulse: number;
  /** Before the thrust curve's last point. */
  readonly thrusting: boolean;
}

/** Everything that the right-hand sides need, prepared once a flight. */
export interface FlightModel {
  readonly inputs: FlightInputs;
  readonly options: ResolvedFlightOptions;
  /** Reference area [m²]. */
  readonly area: number;
  readonly burn: Burn;
  /** Stretches from ignition to the time limit. */
  readonly stretches: readonly Stretch[];
  readonly airAt: (z: number) => Air;
  readonly windAt: (z: number) => Vec3;
  /** On top of that wind, in the rigid model. */
  readonly turbulence: Turbulence | null;
  readonly gravityAt: (z: number) => number;
  readonly parts: readonly Part[];
  readonly bodyLift: BodyLift | null;
  readonly drag: (mach: number, reynoldsPerMetre: number, thrusting: boolean) => number;
  /** Unit vector along the guide. */
  readonly guideDirection: Vec3;
  readonly airframe: MassState;
  /** The motor as a solid cylinder: its middle from the nose tip [m], its squared radius of gyration across [m²]. */
  readonly motorPlace: { readonly centre: number; readonly gyration: number };
  readonly totalImpulse: number;
}

/** Thrust at a time in a stretch [N]. */
export function thrustIn(stretch: Stretch, t: number): number {
  return stretch.thrust + stretch.slope * (t - stretch.from);
}

/** Mass, balance point and inertia at a time in a stretch, with the propellant flow [kg/s]. */
export interface MassNow extends MassState {
  readonly flow: number;
}

/**
 * The same as `loadedAt` for the motor's mass at that time, written out: it is asked for at every call of a right-hand side.
 */
export function massIn(model: FlightModel, stretch: Stretch, t: number): MassNow {
  const { airframe, motorPlace, totalImpulse } = model;
  const { loadedMass, propellantMass } = model.inputs.motor;
  const dt = t - stretch.from;
  const spent = (stretch.impulse + dt * (stretch.thrust + 0.5 * stretch.slope * dt)) / totalImpulse;
  const motorMass = loadedMass - propellantMass * Math.min(1, spent);
  const mass = airframe.mass + motorMass;
  const apart = motorPlace.centre - airframe.balance;
  return {
    mass,
    balance: airframe.balance + (motorMass / mass) * apart,
    inertia: airframe.inertia + motorMass * (motorPlace.gyration + (airframe.mass / mass) * apart * apart),
    flow: (propellantMass * thrustIn(stretch, t)) / totalImpulse,
  };
}

function stretchesOf(inputs: FlightInputs, burnout: number, timeLimit: number): Stretch[] {
  const { times, thrusts } = inputs.motor.thrust;
  const impulse = prepareImpulse(inputs.motor.thrust);
  const last = times[times.length - 1] as number;
  const knots = [...new Set([0, ...times, burnout, timeLimit])].filter((t) => t <= timeLimit).sort((a, b) => a - b);
  const stretches: Stretch[] = [];
  for (let i = 0; i + 1 < knots.length; i++) {
    const from = knots[i] as number;
    const to = knots[i + 1] as number;
    const after = times.findIndex((t) => t > from);
    const burning = after > 0;
    const [t0, t1] = burning ? [times[after - 1] as number, times[after] as number] : [0, 1];
    const [f0, f1] = burning ? [thrusts[after - 1] as number, thrusts[after] as number] : [0, 0];
    const slope = (f1 - f0) / (t1 - t0);
    stretches.push({
      from,
      to,
      thrust: f0 + slope * (from - t0),
      slope,
      impulse: impulse.at(from),
      thrusting: from < last,
    });
  }
  return stretches;
}

/** Prepares a flight: tables of nothing yet, only closures over the exact formulas. */
export function prepareFlight(inputs: FlightInputs, options: ResolvedFlightOptions): FlightModel {
  const { rocket, motor, guide } = inputs;
  const burn = burnOf(motor.thrust);
  const gravity = fieldGravity(inputs.air);
  const { gravity: constant, turbulence } = options;
  const wind = windAt(inputs.wind);
  return {
    inputs,
    options,
    area: (Math.PI * rocket.diameter ** 2) / 4,
    burn,
    stretches: stretchesOf(inputs, burn.end, options.timeLimit),
    airAt: fieldAir(inputs.air),
    windAt: wind,
    turbulence: turbulence === null || options.model !== "rigid" ? null : drydenTurbulence(turbulence, wind),
    gravityAt: constant === null ? gravity.at : () => constant,
    parts: partsWithStatedCp(rocket),
    bodyLift: options.bodyLift ? bodyLift(rocket) : null,
    drag: dragCoefficient(rocket, motor),
    guideDirection: [
      Math.sin(guide.tilt) * Math.sin(guide.toward),
      Math.sin(guide.tilt) * Math.cos(guide.toward),
      Math.cos(guide.tilt),
    ],
    airframe: airframeWithBallast(rocket, inputs.ballast),
    motorPlace: {
      centre: rocket.mount.motorAftAt - motor.length / 2,
      gyration: motor.length ** 2 / 12 + motor.diameter ** 2 / 16,
    },
    totalImpulse: burn.totalImpulse,
  };
}
