import type { Vec3 } from "../math/vec3.js";
import type { Rocket } from "../rocket/rocket.js";
import { leanAfter, leanRateAfter } from "./lean.js";
import { type FlightModel, massIn, type Stretch, thrustIn } from "./model.js";
import { pitchingSize } from "./pitching.js";
import { type Kinematics, speedOf } from "./trajectory.js";

/**
 * Way on which the aft fitting alone is still on the guide [m]; 0: the rocket is free once the forward one has left.
 *
 * Between two fittings that far apart.
 */
export function pivotWayOf(rocket: Pick<Rocket, "fittings">): number {
  if (rocket.fittings.length < 2) return 0;
  const places = rocket.fittings.map(({ at }) => at);
  return Math.max(...places) - Math.min(...places);
}

/** The aft fitting from the nose tip [m]; 0 without fittings. */
export function pivotAtOf(rocket: Pick<Rocket, "fittings">): number {
  return Math.max(0, ...rocket.fittings.map(({ at }) => at));
}

/** How the forward and then the aft fitting leave the guide. */
export interface Departure {
  /** When the forward one and the aft one leave [s]. */
  readonly from: number;
  readonly to: number;
  /** Speed along the guide then [m/s]. */
  readonly speedFrom: number;
  readonly speedTo: number;
}

/** What the swing about the aft fitting leaves the rocket with. */
export interface TipOff {
  /** Lean of the axis off the guide, across it, and its rate [rad, rad/s]. */
  readonly lean: Vec3;
  readonly rate: Vec3;
  /** The balance point's way ahead of the fitting [m]. */
  readonly ahead: number;
}

/**
 * The swing about the aft fitting while it alone is on the guide, in closed form.
 *
 * The wind pushes the parts ahead of the fitting downwind and the weight pulls the nose down a leaning guide, so that the rocket
 * leaves turning away from the wind, into which it then turns. With l the way of a part ahead of the fitting, b that of the balance
 * point, across the guide and for small leans δ: (I + m b²) δ'' = ½ρVA Σ CN l (w + v δ − l δ') − jet δ' + m b g + b (T − D) δ, all
 * held at its value half-way.
 *
 * @source the pivot's equation of the rigid body for small angles (derivation in docs/models.md)
 */
export function tipOff(model: FlightModel, stretch: Stretch, departure: Departure): TipOff {
  const { parts, bodyLift, area, guideDirection: d, options, inputs } = model;
  const { from, to } = departure;
  const time = 0.5 * (from + to);
  const way = inputs.guide.travel + 0.5 * pivotWayOf(inputs.rocket);
  const z = way * d[2];
  const speed = 0.5 * (departure.speedFrom + departure.speedTo);
  const body = massIn(model, stretch, time);
  const air = model.airAt(z);
  const pivot = pivotAtOf(inputs.rocket);
  const ahead = pivot - body.balance;

  const wind = model.windAt(z);
  const windAlong = wind[0] * d[0] + wind[1] * d[1];
  const airspeed = Math.hypot(speed * d[0] - wind[0], speed * d[1] - wind[1], speed * d[2]);
  const perSpeed = 0.5 * air.density * airspeed * area;
  const gravity = model.gravityAt(z);
  const weight = body.mass * ahead * gravity * d[2];
  const push = [weight * d[0], weight * d[1], weight * d[2] - body.mass * ahead * gravity] as const;
  let [east, north, up] = push;
  const mach = airspeed / air.soundSpeed;
  const cd = model.drag(mach, (airspeed * air.density) / air.viscosity, stretch.thrusting);
  let growth = ahead * (thrustIn(stretch, time) - perSpeed * airspeed * cd);
  let damping = body.flow * (inputs.rocket.mount.motorAftAt - body.balance) ** 2;
  const add = (at: number, strengthOf: (across: number) => number): void => {
    const arm = pivot - at;
    const there = model.windAt(z + (body.balance - at) * d[2]);
    const along = there[0] * d[0] + there[1] * d[1];
    const [we, wn, wu] = [there[0] - along * d[0], there[1] - along * d[1], -along * d[2]];
    const strength = strengthOf(Math.hypot(we, wn, wu)) * arm;
    east += strength * we;
    north += strength * wn;
    up += strength * wu;
    growth += strength * (speed - windAlong);
    damping += strength * arm;
  };
  const slopeMach = options.compressibility ? mach : 0;
  for (const part of parts) add(part.cpAt(slopeMach), () => perSpeed * part.slopeAt(slopeMach));
  if (bodyLift !== null) add(bodyLift.at, (across) => 0.5 * air.density * bodyLift.area * bodyLift.cdc * across);

  const inertia = body.inertia + body.mass * ahead * ahead;
  const lean = leanAfter(to - from, damping / inertia, growth / inertia) / inertia;
  const rate = leanRateAfter(to - from, damping / inertia, growth / inertia) / inertia;
  return {
    lean: [lean * east, lean * north, lean * up],
    rate: [rate * east, rate * north, rate * up],
    ahead,
  };
}

/**
 * The free pitching body's state once the aft fitting has left too.
 *
 * @param forward when the forward fitting left
 * @param aft when the aft one leaves, still along the guide
 */
export function tippedState(
  model: FlightModel,
  stretch: Stretch,
  forward: Kinematics,
  aft: Kinematics,
): Float64Array<ArrayBuffer> {
  const { lean, rate, ahead } = tipOff(model, stretch, {
    from: forward.time,
    to: aft.time,
    speedFrom: speedOf(forward.velocity),
    speedTo: speedOf(aft.velocity),
  });
  const d = model.guideDirection;
  const long = Math.hypot(d[0] + lean[0], d[1] + lean[1], d[2] + lean[2]);
  const axis = [0, 1, 2].map((i) => (d[i]! + lean[i]!) / long) as unknown as Vec3;
  const state = new Float64Array(pitchingSize);
  for (let i = 0; i < 3; i++) {
    state[i] = aft.position[i]! + ahead * lean[i]!;
    state[3 + i] = aft.velocity[i]! + ahead * rate[i]!;
    state[6 + i] = axis[i]!;
  }
  state[9] = axis[1] * rate[2] - axis[2] * rate[1];
  state[10] = axis[2] * rate[0] - axis[0] * rate[2];
  state[11] = axis[0] * rate[1] - axis[1] * rate[0];
  return state;
}
