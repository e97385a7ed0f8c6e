import { type DecisionInputs, descend, fly, type LogSamples } from "@delaywright/engine";
import { randomNumbers } from "./invented-log.js";

/** What was true of a flight: factors on the plan's drag and impulse, and the delay as it burnt [s]; null: it never opened. */
export interface FlightTruth {
  readonly drag: number;
  readonly impulse: number;
  readonly delay: number | null;
  readonly seed: number;
  /** Time on the pad before ignition [s]. */
  readonly pad?: number;
}

const RATE = 20;
/** One sigma of a height [m]. */
const NOISE = 0.3;

/** Heights of a flight as a barometer would see them 20 times a second, from the pad to the ground. */
export function flownSamples(
  inputs: DecisionInputs,
  { drag, impulse, delay, seed, pad = 10 }: FlightTruth,
): LogSamples {
  const { rocket, motor } = inputs;
  const flight = fly({
    ...inputs,
    rocket: { ...rocket, drag: { ...rocket.drag, scale: rocket.drag.scale * drag } },
    motor: { ...motor, thrust: { ...motor.thrust, thrusts: motor.thrust.thrusts.map((thrust) => thrust * impulse) } },
  });
  const opens = delay === null ? null : (flight.events.burnout?.time ?? 0) + delay + inputs.recovery.lineStretch;
  const descent = opens === null ? null : descend(flight.model, flight.at(opens), 1e-7);
  const lands = (descent === null ? flight.events.landing?.time : descent.landing?.time) ?? 0;
  const heightAt = (time: number): number => {
    if (time <= 0 || time >= lands) return 0;
    return (descent !== null && opens !== null && time > opens ? descent.at(time) : flight.at(time)).position[2];
  };
  const random = randomNumbers(seed);
  const normal = (): number => Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
  const time = Float64Array.from({ length: Math.floor((pad + lands + 6) * RATE) }, (_, i) => i / RATE);
  return { time, height: time.map((t) => Math.max(0, heightAt(t - pad)) + NOISE * normal()), marks: [] };
}
