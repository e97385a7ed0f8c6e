import type { QuickModel } from "../../flight/options.js";
import type { Candidate, OpenPlan } from "./candidate.js";
import { type RefusalGroup, refusalGroups } from "./groups.js";
import { judgeMotor } from "./judge-motor.js";
import type { BrokenMotor, JudgedMotor, RankedMotor, RefusedMotor } from "./judged-motor.js";
import { type Aim, orderedBy } from "./order.js";
import type { ShortlistSpec } from "./spec.js";
import { judgeUnflown } from "./unflown.js";

/**
 * Judges one motor, here or on a worker, as `judgeMotor` does. It rejects to call everything off: whoever asked then rejects
 * with the same error.
 */
export type MotorRunner = (spec: ShortlistSpec, candidate: Candidate) => Promise<JudgedMotor>;

export interface ShortlistOptions {
  readonly aim?: Aim;
  /** Flights drawn for each motor. */
  readonly draws?: number;
  readonly seed?: number;
  readonly model?: QuickModel;
  /** Who judges a motor; left out: the caller's own thread. */
  readonly run?: MotorRunner;
  /** Motors under way at once, ≥ 1: as many as `run` has workers. */
  readonly lanes?: number;
  /** Told each motor as it is judged, in no order, with how many of them are done. */
  readonly onRow?: (row: JudgedMotor, done: number, of: number) => void;
}

/** The motors of a library against one plan. */
export interface Shortlist {
  readonly aim: Aim;
  /** Those that are not refused, each with its looks; in the order of the aim. */
  readonly ranked: readonly RankedMotor[];
  /** By their first reason. */
  readonly refused: readonly RefusalGroup[];
  /** By their identifiers. */
  readonly broken: readonly BrokenMotor[];
  readonly draws: number;
  readonly seed: number;
  readonly model: QuickModel;
}

/** 500 draws read odds to a few percent, which is what tells motors apart. */
export const defaultShortlistOptions = Object.freeze({
  aim: Object.freeze({ by: "best-odds" }) as Aim,
  draws: 500,
  seed: 1,
  model: "pitching" as QuickModel,
  lanes: 1,
});

/**
 * Every motor of a library against one plan: refused with value and limit, or ranked by the delay to cut and its odds.
 *
 * What can be refused without a flight is told first, the others as they are judged. Each motor is judged by itself with the
 * same draws, so the answer does not depend on the order, on who judges, or on what else the library holds; one that is
 * broken stops no other.
 *
 * @param motors each with an identifier of its own
 * @param plan without issues, its motor left open; its `ruleSet` says whose limits refuse a motor, `stated` what the flyer is certified for
 * @param options draws ≥ 1, any integer seed
 * @throws what the runner rejects with, at once
 * @example
 * const { ranked, refused } = await shortlist(motors, plan, { aim: { by: "nearest-height", height: 800 } });
 * ranked[0]?.drawn.toCut?.delay;
 */
export async function shortlist(
  motors: readonly Candidate[],
  plan: OpenPlan,
  options: ShortlistOptions = {},
): Promise<Shortlist> {
  const { aim, draws, seed, model, lanes } = { ...defaultShortlistOptions, ...options };
  const { run = (...asked: Parameters<MotorRunner>) => judgeMotor(...asked), onRow } = options;
  const spec: ShortlistSpec = { plan, draws, seed, model };
  const rows: JudgedMotor[] = [];
  const tell = (row: JudgedMotor): void => {
    rows.push(row);
    onRow?.(row, rows.length, motors.length);
  };
  const waiting: Candidate[] = [];
  for (const candidate of motors) {
    const row = judgeUnflown(spec, candidate);
    if (row === null) waiting.push(candidate);
    else tell(row);
  }
  const lane = async (): Promise<void> => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift())
      tell(
        await run(spec, next).catch((error: unknown) => {
          waiting.length = 0;
          throw error;
        }),
      );
  };
  await Promise.all(Array.from({ length: lanes }, lane));
  const of = <Outcome extends JudgedMotor["outcome"]>(outcome: Outcome) =>
    rows.filter((row): row is Extract<JudgedMotor, { outcome: Outcome }> => row.outcome === outcome);
  const refused: RefusedMotor[] = of("refused");
  return {
    aim,
    ranked: orderedBy(of("ranked"), aim),
    refused: refusalGroups(refused),
    broken: of("broken").sort((a, b) => (a.id < b.id ? -1 : 1)),
    draws,
    seed,
    model,
  };
}
