import { descend, type FlightInputs, fieldAir, fly } from "../../src/index.js";
import type { Random } from "../random.js";
import { departure } from "./departure.js";
import { drawnPlan } from "./drawn-plan.js";

const GRAVITY = 9.80665;

/** What truly happened, on a clock that is 0 at ignition. */
export interface TrueFlight {
  /** As planned: what the estimator may know. */
  readonly planned: FlightInputs;
  /** As flown. */
  readonly flown: FlightInputs;
  /** Logarithms of the flown factors on drag and impulse. */
  readonly lnDrag: number;
  readonly lnImpulse: number;
  /** Charge fires [s]. */
  readonly fires: number;
  readonly events: {
    readonly liftOff: number;
    readonly guideExit: number;
    readonly burnout: number;
    readonly apogee: number;
    /** Line stretch of the first canopy. */
    readonly opening: number;
    readonly main: number | null;
    readonly landing: number;
  };
  readonly highestMach: number;
  readonly heightAt: (time: number) => number;
  readonly speedAt: (time: number) => number;
  readonly airspeedAt: (time: number) => number;
  /** What an ideal accelerometer along the axis feels, 1 g at rest [m/s²]. */
  readonly feltAt: (time: number) => number;
  readonly machAt: (time: number) => number;
  readonly pressureAt: (height: number) => number;
}

/** Draws a rocket, a motor, a day, a delay and flies it, by the engine's own flight and descent. */
export function trueFlight(random: Random): TrueFlight {
  for (;;) {
    const made = drawn(random);
    if (made !== null) return made;
  }
}

function drawn(random: Random): TrueFlight | null {
  const { planned, flown, lnDrag, lnImpulse } = drawnPlan(random);
  const dual = planned.recovery.drogue !== undefined;
  const flight = fly(flown, { tolerance: 1e-7 });
  const { liftOff, guideExit, burnout, apogee, landing } = flight.events;
  if (!liftOff || !guideExit || !burnout || !apogee || !landing) return null;
  // most charges fire near the top, some far off it
  const spread = random.chance(0.8) ? 0.8 : 2.2;
  const fires = Math.max(burnout.time + 1.5, apogee.time + 0.3 + spread * random.normal());
  const opens = fires + planned.recovery.lineStretch;
  if (opens > landing.time - 3 || flight.at(opens).position[2] < 60 || apogee.position[2] < 80) return null;
  const way = descend(flight.model, flight.at(opens), 1e-6);
  if (way.landing === null) return null;
  const down = way.landing.time;
  const stateAt = (t: number) => (t <= opens ? flight.at(Math.max(t, liftOff.time)) : way.at(Math.min(t, down)));
  const resting = (t: number): boolean => t <= liftOff.time || t >= down;
  const off = departure(random, { from: liftOff.time, top: apogee.time, height: apogee.position[2], opens, down });
  const heightAt = (t: number): number => (resting(t) ? 0 : stateAt(t).position[2] + off(t).height);
  const hang = random.between(0.3, 1) * (random.chance(0.5) ? 1 : -1);
  const lying = random.between(-0.3, 0.3);
  const feltAt = (t: number): number => {
    if (t >= down) return lying * GRAVITY;
    if (t <= liftOff.time) return GRAVITY * Math.cos(planned.guide.tilt);
    const step = 5e-4;
    const [a, b] = [Math.max(t - step, liftOff.time), Math.min(t + step, down)];
    const [va, vb] = [stateAt(a).velocity, stateAt(b).velocity];
    const felt: [number, number, number] = [
      (vb[0] - va[0]) / (b - a),
      (vb[1] - va[1]) / (b - a),
      (vb[2] - va[2]) / (b - a) + GRAVITY,
    ];
    felt[2] += (off(b).speed - off(a).speed) / (b - a);
    if (t > opens) return hang * Math.hypot(...felt) * (1 + 0.3 * Math.sin(4 * t));
    const { axis } = stateAt(t);
    return felt[0] * axis[0] + felt[1] * axis[1] + felt[2] * axis[2];
  };
  const speedAt = (t: number): number => (resting(t) ? 0 : stateAt(t).velocity[2] + off(t).speed);
  let top = Math.min(opens, apogee.time - 1);
  for (let [k, high] = [0, top + 8]; k < 60; k++) {
    const middle = 0.5 * (top + high);
    if (speedAt(middle) > 0) top = middle;
    else high = middle;
  }
  const air = fieldAir(planned.air);
  return {
    planned,
    flown,
    lnDrag,
    lnImpulse,
    fires,
    events: {
      liftOff: liftOff.time,
      guideExit: guideExit.time,
      burnout: burnout.time,
      apogee: top,
      opening: opens,
      main: way.openings.find((o) => o.which === "main" && dual)?.time ?? null,
      landing: down,
    },
    highestMach: flight.peaks().highestMach,
    heightAt,
    speedAt,
    airspeedAt: (t) => (resting(t) ? 0 : stateAt(t).airspeed),
    feltAt,
    machAt: (t) => (resting(t) ? 0 : stateAt(t).mach),
    pressureAt: (h) => air(h).pressure,
  };
}
