import { type DecisionData, decisionData, learnerOf, learnFrom, type PlanParts } from "@delaywright/documents";
import {
  type DecisionInputs,
  decide,
  defaultDrawsOf,
  type EnsembleRunner,
  type TurningModel,
  withLearned,
} from "@delaywright/engine";
import { EXIT, type Io, type Pool } from "../io/io.js";
import { issuesText } from "../print/issues.js";
import { flightsFolder } from "./flights-folder.js";
import { readyPlan } from "./load.js";
import { otherRockets } from "./other-rockets.js";

/** How a plan is decided. */
export interface DecidedArgs {
  readonly plan: string;
  readonly model?: TurningModel;
  readonly draws?: number;
  readonly seed?: number;
  /** Threads that fly the draws; left out: one for a few thousand draws, then as many as the machine has, up to four. */
  readonly workers?: number;
  /** The folder whose flights it learns from; left out: what the plan itself says was learned. */
  readonly flights?: string;
}

/** A plan with its decision, or the exit code after its issues were told. */
export type Decided =
  | { readonly ok: true; readonly data: DecisionData; readonly parts: PlanParts }
  | { readonly ok: false; readonly code: number };

/** Up to so many draws one thread is done before others have started. */
const ONE_WORKER_DRAWS = 4000;

/** Reads a plan and decides it; shows how far it has come. */
export async function decided(args: DecidedArgs, io: Io): Promise<Decided> {
  const plan = await readyPlan(args.plan, io);
  if (!plan.ok) return plan;
  const { parts, context, warnings: doubts } = plan;
  const inputs = args.flights === undefined ? plan.inputs : await taught(plan.inputs, parts, args.flights, io);
  const others = inputs.cutSoFar === undefined ? [] : await otherRockets(parts, inputs.air, io.files);
  const { model = "pitching" } = args;
  const many = model === "rigid" || (args.draws ?? defaultDrawsOf(model)) > ONE_WORKER_DRAWS;
  const pool = await io.openPool(args.workers ?? (many ? Math.min(io.cores, 4) : 1));
  try {
    const decision = await decide(inputs, {
      ...(args.draws === undefined ? {} : { draws: args.draws }),
      ...(args.seed === undefined ? {} : { seed: args.seed }),
      ...(args.model === undefined ? {} : { model: args.model }),
      otherRockets: others,
      run: showingProgress(pool, io),
    });
    return { ok: true, data: decisionData({ decision, inputs, context, doubts }), parts };
  } finally {
    io.progress.end();
    await pool.close();
  }
}

/** The plan with what the flights of a folder teach; files that cannot be read are told, and stop nothing. */
async function taught(inputs: DecisionInputs, parts: PlanParts, folder: string, io: Io): Promise<DecisionInputs> {
  const { flights, issues } = await flightsFolder(folder, io);
  if (issues.length > 0) io.err(issuesText(issues));
  const past = flights.map((each) => each.past);
  return withLearned(inputs, learnFrom(past, learnerOf(parts), inputs));
}

/** Flies draws in a pool, and shows how far they have come. */
export function showingProgress(pool: Pool, io: Io): EnsembleRunner {
  return (spec, from, to, onProgress) =>
    pool.run(spec, from, to, (done) => {
      io.progress.update(done, to - from);
      onProgress?.(done);
    });
}

/** 3 where a check says stop, or where no setting reaches the plan's least odds. */
export function exitCodeOf({ checks, toCut }: DecisionData): number {
  const short = toCut !== null && !(toCut.reachesLeast && toCut.reachesHolds);
  return short || checks.some((check) => check.verdict === "stop") ? EXIT.notGoodEnough : EXIT.done;
}
