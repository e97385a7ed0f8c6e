import type { Calibration, Decision, DecisionInputs, FlightResult, Learned, Spread } from "@delaywright/engine";
import type {
  ClimbData,
  DebriefData,
  FindingsData,
  FlownDelayData,
  FlownTopData,
  PredictedData,
} from "../answer/debrief-data.js";
import { toldFactor } from "../answer/factor-data.js";
import type { PlanContext } from "../to-engine.js";
import { flownCurve, plannedCurve } from "./curves.js";
import type { DebriefInputs } from "./debrief-inputs.js";
import { eventRows } from "./event-rows.js";
import type { Flown } from "./flown.js";
import { knowledge } from "./knowledge.js";
import { nextData } from "./next-odds.js";
import { notesOf } from "./notes.js";
import type { OpenedRecord } from "./open-record.js";
import { pastData, untaughtOf } from "./past-data.js";
import type { PastFlight } from "./past-flight.js";
import { plannedOpening } from "./planned-opening.js";
import { settingAt } from "./predicted.js";
import { recordData } from "./record-data.js";
import type { SetDelay } from "./set-delay.js";
import type { Learner } from "./teach.js";

/** Everything that a debrief found, before it is put into plain data. */
export interface DebriefParts {
  readonly given: DebriefInputs;
  readonly context: PlanContext;
  /** Name of the plan whose next odds are told. */
  readonly plan: string;
  readonly inputs: DecisionInputs;
  readonly opened: OpenedRecord | null;
  readonly flight: FlightResult;
  readonly planned: Decision;
  readonly predicted: PredictedData;
  readonly set: SetDelay;
  readonly flown: Flown;
  /** This flight as one of the library. */
  readonly own: PastFlight;
  readonly knowledge: {
    readonly of: Learner;
    readonly spread: Spread;
    readonly prior: Learned;
    readonly before: Learned;
    readonly after: Learned;
  };
  readonly planLearned: Learned | undefined;
  readonly odds: { readonly before: Decision; readonly after: Decision };
  readonly calibration: Calibration;
}

/** A debrief as plain data. */
export function assembled(parts: DebriefParts): DebriefData {
  const { given, context, inputs, opened, flight, planned, predicted, set, flown, own, odds } = parts;
  const burns = set.set === null ? null : (settingAt(planned, set.set)?.delayMean ?? set.set);
  const opening = plannedOpening(inputs, flight, burns);
  const { events, residual } = eventRows(flight, flown, flown.findings.events, opening);
  const { spread, prior, before, after } = parts.knowledge;
  const told = (learned: Learned) => knowledge(learned, set.set, spread.delay);
  const { excluded, flown: when, name } = given.flight;
  return {
    context,
    flight: {
      name,
      flown: when ?? null,
      number: opened?.number ?? null,
      of: opened?.spans.length ?? null,
      excluded: excluded === undefined ? null : { reason: excluded.reason, when: excluded.when ?? null },
    },
    record: opened === null ? null : recordData(given.record?.file ?? "", opened),
    events,
    predicted,
    delay: delayData(parts),
    top: topData(flown, predicted),
    climb: climbData(flown),
    findings: findingsData(flown),
    learned: {
      prior: told(prior),
      before: told(before),
      after: told(after),
      learned: after,
      untaught: untaughtOf(own, parts.knowledge.of),
    },
    next: nextData(parts.plan, odds.before, odds.after),
    calibration: parts.calibration,
    past: [
      ...given.past.map((each) => pastData(each, false, parts.knowledge.of)),
      pastData(own, true, parts.knowledge.of),
    ],
    curves: {
      flown: flown.record === null ? { time: [], height: [] } : flownCurve(flown.record, flown.events),
      predicted: plannedCurve(flight, opening),
      residual,
    },
    notes: notesOf({ opened, flown, planLearned: parts.planLearned, before }),
    issues: given.issues ?? [],
    seed: planned.seed,
    draws: planned.draws,
    model: planned.model,
  };
}

function delayData({ flown, set, predicted, flight }: DebriefParts): FlownDelayData {
  const { opening, findings, delay } = flown;
  const { burnout, apogee } = flight.events;
  const range = predicted.secondsFromApogee;
  return {
    set: set.set,
    setFrom: set.from,
    flown: delay,
    coast: findings.coast,
    predictedCoast: burnout === null || apogee === null ? null : apogee.time - burnout.time,
    secondsFromApogee: opening?.fromTop ?? null,
    openingInRange:
      opening === null || range === null || findings.openedBy !== "motor"
        ? null
        : opening.fromTop >= range.p05 && opening.fromTop <= range.p95,
    openingSpeed: opening?.airspeed ?? null,
    openingHeight: opening?.height ?? null,
  };
}

function topData({ findings, events, record, cutShort }: Flown, { apogee }: PredictedData): FlownTopData | null {
  const height = findings.apogee;
  if (height === null) return null;
  return {
    height,
    error: record === null ? null : (events.apogee?.heightError ?? null),
    inBand: cutShort ? null : height >= apogee.p05 && height <= apogee.p95,
  };
}

function climbData({ climb }: Flown): ClimbData | null {
  if (climb === null) return null;
  const { lnDrag, lnImpulse, covariance, residual, converged } = climb;
  const [[drag, both], [, impulse]] = covariance;
  const correlation = both / Math.sqrt(drag * impulse);
  return {
    drag: toldFactor(lnDrag, drag),
    impulse: toldFactor(lnImpulse, impulse),
    correlation: Number.isFinite(correlation) ? correlation : null,
    residual,
    converged,
  };
}

function findingsData(flown: Flown): FindingsData {
  const { events: _, climb: __, ...findings } = flown.findings;
  return { ...findings, climb: climbData(flown) };
}
