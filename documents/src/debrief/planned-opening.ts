import {
  type DecisionInputs,
  type Descent,
  descend,
  type FlightResult,
  type PredictedOpening,
} from "@delaywright/engine";

/** How a flight was to be opened. */
export interface PlannedOpening extends PredictedOpening {
  /** From ignition [s]; null: it comes down unopened. */
  readonly opens: number | null;
}

/** Relative tolerance of the way down, against which seconds are read. */
const TOLERANCE = 1e-6;

/**
 * Where the plan opens the rocket: a line stretch after its electronics fires, or after the delay that was set has burnt.
 *
 * @param delay as it is expected to burn [s]; null: not known, or none
 */
export function plannedOpening(inputs: DecisionInputs, flight: FlightResult, delay: number | null): PlannedOpening {
  const { recovery, motor } = inputs;
  const { burnout, apogee, landing } = flight.events;
  const byDelay = recovery.motorCharge === "primary";
  const clock = motor.delay.kind === "none" ? "burnout" : motor.delay.clock;
  const start = clock === "ignition" ? flight.model.burn.end : burnout?.time;
  const charge = start === undefined || delay === null ? null : start + delay;
  const electronics =
    apogee === null || recovery.electronics === undefined ? null : apogee.time + recovery.electronics.delay;
  const fires = byDelay ? charge : (electronics ?? charge);
  const opens = fires === null ? null : fires + recovery.lineStretch;
  const opened: Descent | null =
    opens === null || landing === null || opens >= landing.time
      ? null
      : descend(flight.model, flight.at(opens), TOLERANCE);
  return { opens: opened === null ? null : opens, opened, byDelay };
}
