import {
  type ClimbFit,
  cutShort,
  type DecisionInputs,
  type FlightRecord,
  type FlightResult,
  type FlownDelay,
  type FlownOpening,
  type FoundEvents,
  fitClimb,
  flownDelay,
  flownOpening,
  flownOutcome,
  fly,
  setDelayError,
  type TurningModel,
  withScales,
} from "@delaywright/engine";
import type { FlownOutcome } from "../answer/debrief-data.js";
import { eventFindings, type Findings } from "./findings.js";
import { foundEvents } from "./found-events.js";
import type { OpenedRecord } from "./open-record.js";

/** What a record, or what was once written down of it, says of a flight. */
export interface Flown {
  /** Null where only what was written down is left. */
  readonly record: FlightRecord | null;
  readonly events: FoundEvents;
  readonly climb: ClimbFit | null;
  readonly delay: FlownDelay;
  readonly opening: FlownOpening | null;
  readonly outcome: FlownOutcome | null;
  /** It opened before the top, so the top that it would have had was not seen. */
  readonly cutShort: boolean;
  readonly findings: Findings;
}

/** What it is seen against. */
export interface FlownAgainst {
  /** Of the plan as flown, without what was learned. */
  readonly inputs: DecisionInputs;
  /** The plan's flight, with what was learned. */
  readonly flight: FlightResult;
  readonly model: TurningModel;
  /** As set [s]; null: not known, or no delay. */
  readonly set: number | null;
}

/**
 * A flight by its record: climb fitted, delay and opening read off.
 *
 * @param opened the flight found in the record
 * @param against the plan as flown
 * @param stated how it came in, in the flyer's own word, which no record overrules
 */
export function flownByRecord(opened: OpenedRecord, against: FlownAgainst, stated: FlownOutcome | null): Flown {
  const { inputs, model } = against;
  const { record, events, found } = opened;
  const fit = fitClimb(record, events, inputs, { spread: inputs.spread, model });
  const climb = fit.converged ? fit : null;
  const delay: FlownDelay =
    inputs.motor.delay.kind === "none" ? { kind: "unknown" } : flownDelay(events, delayHow(against));
  return completed(against, { record, events, climb, delay }, eventFindings(events, found), stated);
}

/** A flight by what was once found out, its record gone or never there. */
export function flownByFindings(written: Findings, against: FlownAgainst, stated: FlownOutcome | null): Flown {
  const { climb, delay } = written;
  const events = foundEvents(written.events);
  const flown = completed(against, { record: null, events, climb, delay }, written.events, stated);
  const { coast, apogee, openedAt, openedBy } = written;
  const { findings } = flown;
  const outcome = stated ?? written.outcome ?? flown.outcome;
  return {
    ...flown,
    outcome,
    findings: {
      ...findings,
      outcome,
      coast: coast ?? findings.coast,
      apogee: apogee ?? findings.apogee,
      openedAt: openedAt ?? findings.openedAt,
      openedBy: openedBy ?? findings.openedBy,
    },
  };
}

function delayHow({ inputs, flight }: FlownAgainst): Parameters<typeof flownDelay>[1] {
  const { motor, recovery } = inputs;
  const { delay } = motor;
  return {
    clock: delay.kind === "none" ? "burnout" : delay.clock,
    nominalBurnEnd: flight.model.burn.end,
    nominalLiftOff: flight.events.liftOff?.time ?? 0,
    lineStretch: recovery.lineStretch,
    motorCharge: recovery.motorCharge,
  };
}

function completed(
  against: FlownAgainst,
  seen: Pick<Flown, "record" | "events" | "climb" | "delay">,
  events: Findings["events"],
  stated: FlownOutcome | null,
): Flown {
  const { inputs, flight, model, set } = against;
  const opening = flownOpening(seen.events, fly(asFitted(inputs, seen.climb), { model }));
  const outcome = stated ?? flownOutcome(seen.events, opening, inputs.limits);
  const { liftOff, burnout, apogee, opening: opened } = seen.events;
  const short = cutShort(seen.events);
  const openedBy = inputs.recovery.motorCharge === "primary" ? "motor" : "electronics";
  return {
    ...seen,
    opening,
    outcome,
    cutShort: short,
    findings: {
      set,
      setError: set === null ? null : setDelayError(inputs, flight, set),
      delay: seen.delay,
      openedBy: opened === null ? null : openedBy,
      openedAt: opened === null || liftOff === null ? null : opened.time - liftOff.time,
      coast: burnout === null || apogee === null || short ? null : apogee.time - burnout.time,
      apogee: apogee?.height ?? null,
      outcome,
      outcomeStated: stated !== null,
      events,
      climb: seen.climb,
    },
  };
}

/** The plan with drag and impulse as the climb tells them. */
function asFitted(inputs: DecisionInputs, climb: ClimbFit | null): DecisionInputs {
  return climb === null ? inputs : withScales(inputs, climb.lnDrag, climb.lnImpulse);
}
