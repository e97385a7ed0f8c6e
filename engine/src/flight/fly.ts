import { rootBetween } from "../math/root.js";
import { alignedSize } from "./aligned.js";
import { settledSwing } from "./bounds.js";
import { pivotWayOf, tippedState } from "./departure.js";
import { pullAtRest } from "./guide.js";
import { swingLeft } from "./hand-over.js";
import type { FlightInputs } from "./inputs.js";
import { type Derivatives, type EventSpec, type Integration, integrate } from "./integrate.js";
import { type FlightModel, prepareFlight, type Stretch } from "./model.js";
import { type FlightOptions, resolveFlightOptions } from "./options.js";
import { peaksOf, ratesOf } from "./peaks.js";
import { pitchingSize } from "./pitching.js";
import type { FlightEnd, FlightResult, Peaks } from "./result.js";
import { attitudeAlong } from "./rigid/attitude.js";
import { rigidBody } from "./rigid/body.js";
import { pivotRates } from "./rigid/pivot.js";
import { rigidRates, rigidSize, rigidSizeInTurbulence } from "./rigid/rates.js";
import { type FlownPhase, type Kinematics, kinematicsOf, type Leg, trajectoryAt } from "./trajectory.js";

const rigidScales = [100, 100, 100, 10, 10, 10, 1, 1, 1, 1, 10, 10, 10, 1, 1];

const scales: Readonly<Record<FlownPhase, readonly number[]>> = {
  guide: [1, 10],
  pitching: [100, 100, 100, 10, 10, 10, 1, 1, 1, 1, 1, 1],
  aligned: [100, 100, 100, 10, 10, 10],
  pivot: rigidScales,
  rigid: rigidScales,
};

/** First moment at which the thrust carries the weight, or null. */
function liftOffTime(model: FlightModel): number | null {
  for (const stretch of model.stretches) {
    const pull = (t: number): number => pullAtRest(model, stretch, t);
    if (pull(stretch.from) > 0) return stretch.from;
    if (pull(stretch.to) > 0) return rootBetween(pull, stretch.from, stretch.to, 1e-12);
  }
  return null;
}

/**
 * Flies one rocket once, unopened, from ignition to the ground, with dense output.
 *
 * The guide phase, then the tip-off on the aft fitting and the pitching model until the swing has settled (by apogee at the latest),
 * then nose-first with the trim of the turning path; or, with `model: "aligned"`, along the airflow at once; or, with `model: "rigid"`, pivoting on the aft
 * fitting and then a rigid body all the way to the ground. Events are roots, found to 1e-9 s.
 * The result never throws for a flight that goes badly: `ended` says how it ended.
 *
 * @param inputs SI units, as checked by `flightIssues`
 * @param options see `FlightOptions`; the resolved set is in the result
 * @source equations in docs/models.md
 * @example
 * fly(inputs).events.apogee?.position[2]; // height of the top [m]
 */
export function fly(inputs: FlightInputs, options: FlightOptions = {}): FlightResult {
  const resolved = resolveFlightOptions(options);
  const model = prepareFlight(inputs, resolved);
  const legs: Leg[] = [];
  const events: { -readonly [K in keyof FlightResult["events"]]: FlightResult["events"][K] } = {
    liftOff: null,
    guideExit: null,
    burnout: null,
    lastFitting: null,
    handOver: null,
    apogee: null,
    landing: null,
  };
  let calls = 0;
  const rigid = resolved.model === "rigid" ? rigidBody(model) : null;
  const held = resolved.model === "pitching" && resolved.rigid.pivot ? pivotWayOf(inputs.rocket) : 0;
  const ratesIn = (phase: FlownPhase, stretch: Stretch): Derivatives => {
    if (rigid !== null && phase === "pivot") return pivotRates(rigid, stretch);
    if (rigid !== null && phase === "rigid") return rigidRates(rigid, stretch);
    return ratesOf(model, phase, stretch);
  };
  const finish = (ended: FlightEnd): FlightResult => {
    let found: Peaks | null = null;
    const peaks = (): Peaks => {
      found ??= peaksOf(model, legs, events.apogee?.time ?? Number.POSITIVE_INFINITY);
      return found;
    };
    const at = (time: number): Kinematics => trajectoryAt(model, legs, time);
    return {
      ended,
      options: resolved,
      model,
      events,
      peaks,
      legs,
      calls,
      at,
    };
  };

  const liftOff = liftOffTime(model);
  if (liftOff === null) return finish("never-lifted");
  let phase: FlownPhase = "guide";
  let time = liftOff;
  let state = Float64Array.of(0, 0);
  events.liftOff = kinematicsOf(model, phase, time, state);

  for (const stretch of model.stretches) {
    if (stretch.to <= time) continue;
    for (;;) {
      const run: Integration = integrate(ratesIn(phase, stretch), state, time, stretch.to, {
        tolerance: resolved.tolerance,
        scales: scales[phase],
        events: eventsOf(model, stretch, phase, events, rigid?.pivotWay ?? held),
      });
      calls += run.calls;
      if (run.steps.length > 0) legs.push({ phase, stretch, steps: run.steps });
      time = run.time;
      state = Float64Array.from(run.state);
      if (run.ended !== "event" && run.ended !== "reached-end") return finish(run.ended);
      let now = kinematicsOf(model, phase, time, state);
      const stop = run.ended === "event" ? run.hits[run.hits.length - 1]?.name : undefined;
      if (stop === "fell back") return finish("never-left-guide");
      if (stop === "landing") {
        events.landing = now;
        return finish("landed");
      }
      if (stop === "apogee") events.apogee = now;
      const left = stop === "guideExit" || stop === "lastFitting";
      if (stop === "guideExit") events.guideExit = now;
      if (left && rigid !== null) {
        phase = stop === "guideExit" && rigid.pivotWay > 0 ? "pivot" : "rigid";
        if (stop === "guideExit") state = rigidState(now, model);
      } else if (stop === "lastFitting" || (stop === "guideExit" && !(held > 0))) {
        phase = resolved.model === "pitching" ? "pitching" : "aligned";
        state =
          stop === "lastFitting" ? tippedState(model, stretch, events.guideExit ?? now, now) : freeState(now, phase);
        now = kinematicsOf(model, phase, time, state);
      }
      if (stop === "lastFitting") events.lastFitting = now;
      const settled =
        stop === "settled" ||
        stop === "apogee" ||
        (left &&
          phase === "pitching" &&
          resolved.handOver &&
          swingLeft(model, stretch, time, state).amplitude < settledSwing);
      if (settled && phase === "pitching") events.handOver = now;
      if (settled && (phase === "pitching" || (phase === "rigid" && !resolved.rigid.pastTop))) {
        phase = "aligned";
        const { impulse } = stop === "apogee" ? { impulse: [0, 0, 0] } : swingLeft(model, stretch, time, state);
        state = freeState(now, phase);
        for (const i of [0, 1, 2]) state[3 + i]! += impulse[i] as number;
      }
      if (time >= stretch.to) break;
    }
    if (time === model.burn.end) events.burnout = kinematicsOf(model, phase, time, state);
  }
  return finish("time-limit");
}

function freeState(now: Kinematics, phase: FlownPhase): Float64Array<ArrayBuffer> {
  const state = new Float64Array(phase === "pitching" ? pitchingSize : alignedSize);
  state.set(now.position, 0);
  state.set(now.velocity, 3);
  if (phase === "pitching") state.set(now.axis, 6);
  return state;
}

/** The rigid body as it comes off the guide: along it, not turning. */
function rigidState(now: Kinematics, model: FlightModel): Float64Array<ArrayBuffer> {
  const state = new Float64Array(model.turbulence === null ? rigidSize : rigidSizeInTurbulence);
  state.set(now.position, 0);
  state.set(now.velocity, 3);
  state.set(attitudeAlong(model.guideDirection), 6);
  return state;
}

function eventsOf(
  model: FlightModel,
  stretch: Stretch,
  phase: FlownPhase,
  passed: FlightResult["events"],
  pivotWay: number,
): EventSpec[] {
  const { travel } = model.inputs.guide;
  const [de, dn, du] = model.guideDirection;
  if (phase === "pivot")
    return [
      {
        name: "lastFitting",
        value: (_, y) => y[0]! * de + y[1]! * dn + y[2]! * du - travel - pivotWay,
        direction: 1,
        stops: true,
      },
      {
        name: "fell back",
        value: (_, y) => y[3]! * de + y[4]! * dn + y[5]! * du + 1e-3,
        direction: -1,
        stops: true,
      },
    ];
  if (phase === "guide")
    return [
      passed.guideExit === null
        ? { name: "guideExit", value: (_, y) => y[0]! - travel, direction: 1, stops: true }
        : { name: "lastFitting", value: (_, y) => y[0]! - travel - pivotWay, direction: 1, stops: true },
      { name: "fell back", value: (_, y) => y[1]! + 1e-3, direction: -1, stops: true },
    ];
  const events: EventSpec[] = [{ name: "landing", value: (_, y) => y[2]!, direction: -1, stops: true }];
  if (passed.apogee === null) events.push({ name: "apogee", value: (_, y) => y[5]!, direction: -1, stops: true });
  if (phase === "pitching" && model.options.handOver)
    events.push({
      name: "settled",
      value: (t, y) => swingLeft(model, stretch, t, y).amplitude - settledSwing,
      direction: -1,
      stops: true,
    });
  return events;
}
