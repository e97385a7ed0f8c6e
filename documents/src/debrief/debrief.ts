import {
  calibration,
  type DecideOptions,
  type Decision,
  type DecisionInputs,
  decide,
  defaultDecideOptions,
  fly,
  type Learned,
  withLearned,
  withoutLearned,
} from "@delaywright/engine";
import type { DebriefData } from "../answer/debrief-data.js";
import type { Fault, Issue } from "../issue.js";
import type { FlightDocument } from "../kinds/flight/schema.js";
import { planToEngine } from "../to-engine.js";
import { assembled } from "./assembled.js";
import type { DebriefInputs } from "./debrief-inputs.js";
import type { WrittenFindings } from "./findings.js";
import { type Flown, type FlownAgainst, flownByFindings, flownByRecord } from "./flown.js";
import { type OpenedFlight, openFlown } from "./open-flown.js";
import type { OpenedRecord } from "./open-record.js";
import { asPast } from "./own-flight.js";
import { pastOdds } from "./past-odds.js";
import { asForetold, predictedAt, writtenForecast } from "./predicted.js";
import { readFindings } from "./read-findings.js";
import { setDelay } from "./set-delay.js";
import { withoutSpentMotor } from "./spent-motor.js";
import { learnerOf, learnFrom } from "./teach.js";
import { writtenFindings } from "./written-findings.js";

/** So close it is the same delay [s]. */
const SAME_DELAY = 0.01;

/** A debrief with what is written into the flight's document, or what is wrong. */
export type Debriefed =
  | {
      readonly ok: true;
      readonly data: DebriefData;
      readonly findings: WrittenFindings;
      readonly forecast: FlightDocument["forecast"];
    }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/**
 * From a plan and what was recorded of its flight to what happened, what it means, what it teaches, and what it changes.
 *
 * The main road: the flight in the record and its events, the delay that was set, what was foretold, climb, delay and opening
 * as flown, the findings, what the library teaches with them and without, and the next odds with and without, from the same
 * draws.
 *
 * @param given the plan as flown, the flight's document, its record, and all other flights
 * @param options draws, seed, model and runner of the odds
 * @returns the debrief as plain data and what is written into the flight's document, or what is wrong with plan or record
 * @example
 * const debriefed = await debrief({ flown: parts, flight, file: "flight.json", record: { file: "log.csv", samples }, past: [] });
 * if (debriefed.ok) debriefed.data.learned.after.drag.factor; // 1.07
 */
export async function debrief(given: DebriefInputs, options: DecideOptions = {}): Promise<Debriefed> {
  const prepared = prepareDebrief(given);
  return prepared.ok ? prepared.debrief(options) : prepared;
}

/** A flight whose record is open: it can be debriefed with few draws, then with all. */
export interface PreparedDebrief {
  /** Null without a record. */
  readonly opened: OpenedFlight | null;
  readonly debrief: (options?: DecideOptions) => Promise<Debriefed>;
}

/**
 * Opens the record of a flight, once; see `debrief`. What a debrief does not owe to its draws is worked out once, too.
 *
 * @example
 * const prepared = prepareDebrief(given);
 * if (prepared.ok) for (const draws of [400, 10_000]) show(await prepared.debrief({ draws }));
 */
export function prepareDebrief(
  given: DebriefInputs,
): ({ readonly ok: true } & PreparedDebrief) | { readonly ok: false; readonly issues: readonly Issue[] } {
  const made = planToEngine(given.flown);
  const next = (given.next ?? given.flown) === given.flown ? made : planToEngine(given.next ?? given.flown);
  if (!made.ok || !next.ok) return { ok: false, issues: [made, next].flatMap((each) => (each.ok ? [] : each.issues)) };
  const inputs = withoutLearned(made.inputs);
  const opened = given.record === undefined ? null : openFlown(given.record, given.flight.findings, inputs);
  if (opened !== null && !opened.ok)
    return { ok: false, issues: placedIn(given.record?.file ?? given.file, opened.faults) };
  const seen = seenOnce((against) => flownBy(given, opened, against));
  return {
    ok: true,
    opened,
    debrief: (options = {}) => debriefed({ given, made, next, inputs, opened, seen }, options),
  };
}

/** A plan made ready for the engine. */
type Made = Extract<ReturnType<typeof planToEngine>, { ok: true }>;

interface Opened {
  readonly given: DebriefInputs;
  readonly made: Made;
  readonly next: Made;
  /** Of the plan as flown, nothing learned. */
  readonly inputs: DecisionInputs;
  readonly opened: OpenedFlight | null;
  readonly seen: (against: FlownAgainst) => Flown;
}

async function debriefed(
  { given, made, next, inputs, opened, seen }: Opened,
  options: DecideOptions,
): Promise<Debriefed> {
  const odds = (of: DecisionInputs): Promise<Decision> => decide(of, options);
  const { model = defaultDecideOptions.model } = options;
  const { findings: written = {}, forecast } = given.flight;
  const planned = await odds(made.inputs);
  const set = setDelay(made.inputs, planned, given.set, readFindings(written).set);
  const foretold = await predictedAt(made.inputs, planned, set.set, odds);
  const keeps = forecast !== undefined && !setsAnew(given);
  const predicted = asForetold(foretold, keeps ? forecast : undefined);

  const flight = fly(made.inputs, { model });
  const flown = seen({ inputs, flight, model, set: set.from === "suggested" ? null : set.set });

  const findings = { ...writtenFindings(flown.findings) };
  const foretoldNow = keeps ? forecast : writtenForecast(predicted);
  const own = asPast(given, findings, foretoldNow);
  const learner = learnerOf(given.next ?? given.flown);
  const told = { of: learner, spread: withoutLearned(next.inputs).spread, set: set.set };
  const before = learnFrom(given.past, learner, next.inputs);
  const after = learnFrom([...given.past, own], learner, next.inputs);

  const fresh = withoutSpentMotor(given.next ?? given.flown, next.inputs);
  // the same figures need not be flown again
  const known = fresh === made.inputs && made.inputs.learned === undefined && knowsNothing(before);
  const oddsBefore = known ? planned : await odds(withLearned(fresh, before));
  const oddsAfter = own.taught === null ? oddsBefore : await odds(withLearned(fresh, after));

  const all = [...given.past, own];
  return {
    ok: true,
    findings,
    forecast: foretoldNow,
    data: assembled({
      given,
      context: made.context,
      plan: next.context.plan,
      inputs,
      opened,
      flight,
      planned,
      predicted,
      set,
      flown,
      own,
      knowledge: { ...told, before, after, prior: learnFrom([], learner, next.inputs) },
      planLearned: made.inputs.learned,
      odds: { before: oddsBefore, after: oddsAfter },
      calibration: calibration(all.flatMap((each) => pastOdds(each) ?? [])),
    }),
  };
}

/** The same is not seen again: climbs are not fitted anew for more draws. */
function seenOnce(see: (against: FlownAgainst) => Flown): (against: FlownAgainst) => Flown {
  let last: { readonly key: string; readonly flown: Flown } | null = null;
  return (against) => {
    const key = `${against.model} ${against.set}`;
    if (last?.key !== key) last = { key, flown: see(against) };
    return last.flown;
  };
}

/** Another delay is said now than was written: what was foretold was foretold of that one. */
function setsAnew({ set, flight }: DebriefInputs): boolean {
  const written = readFindings(flight.findings ?? {}).set;
  return set !== undefined && written !== null && Math.abs(set - written) > SAME_DELAY;
}

function flownBy(given: DebriefInputs, opened: OpenedRecord | null, against: FlownAgainst): Flown {
  const written = readFindings(given.flight.findings ?? {});
  const stated = given.outcome ?? (written.outcomeStated ? written.outcome : null);
  return opened === null ? flownByFindings(written, against, stated) : flownByRecord(opened, against, stated);
}

function knowsNothing({ flights }: Learned): boolean {
  return flights.rocket + flights.motor === 0;
}

function placedIn(file: string, faults: readonly Fault[]): Issue[] {
  return faults.map((fault) => ({ file, ...fault }));
}
