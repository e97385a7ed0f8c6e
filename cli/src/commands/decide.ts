import { type DecisionData, decisionData } from "@delaywright/documents";
import { decide as decideDelay, defaultDecideOptions } from "@delaywright/engine";
import { EXIT, type Io } from "../io/io.js";
import { decisionText } from "../print/decide/decision-text.js";
import { jsonText } from "../print/json.js";
import { readyPlan } from "./load.js";
import { otherRockets } from "./other-rockets.js";

/** What `delaywright decide` was asked. */
export interface DecideArgs {
  readonly plan: string;
  readonly json?: boolean;
  readonly model?: "pitching" | "aligned";
  readonly draws?: number;
  readonly seed?: number;
  /** Threads that fly the draws; left out: one for a few thousand draws, then as many as the machine has, up to four. */
  readonly workers?: number;
}

/** Up to so many draws one thread is done before others have started. */
const ONE_WORKER_DRAWS = 4000;

/** The main job: from a plan to the delay to cut, with its odds and its cut. */
export async function decide(args: DecideArgs, io: Io): Promise<number> {
  const plan = await readyPlan(args.plan, io);
  if (!plan.ok) return plan.code;
  const { inputs, parts, context, warnings: doubts } = plan;
  const others = inputs.cutSoFar === undefined ? [] : await otherRockets(parts, inputs.air, io.files);
  const many = (args.draws ?? defaultDecideOptions.draws) > ONE_WORKER_DRAWS;
  const pool = await io.openPool(args.workers ?? (many ? Math.min(io.cores, 4) : 1));
  try {
    const decision = await decideDelay(inputs, {
      ...(args.draws === undefined ? {} : { draws: args.draws }),
      ...(args.seed === undefined ? {} : { seed: args.seed }),
      ...(args.model === undefined ? {} : { model: args.model }),
      otherRockets: others,
      run: (spec, from, to, onProgress) =>
        pool.run(spec, from, to, (done) => {
          io.progress.update(done, to - from);
          onProgress?.(done);
        }),
    });
    io.progress.end();
    const data = decisionData({ decision, inputs, context, doubts });
    io.out(args.json ? jsonText(data) : decisionText(data, io.colour));
    return exitCode(data);
  } finally {
    io.progress.end();
    await pool.close();
  }
}

/** 3 where a check says stop, or where no setting reaches the plan's least odds. */
function exitCode({ checks, toCut }: DecisionData): number {
  const short = toCut !== null && !(toCut.reachesLeast && toCut.reachesHolds);
  return short || checks.some((check) => check.verdict === "stop") ? EXIT.notGoodEnough : EXIT.done;
}
