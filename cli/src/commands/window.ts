import { windowData } from "@delaywright/documents";
import {
  decide,
  defaultDecideOptions,
  defaultWindowDraws,
  type EnsembleRunner,
  planWindow,
  type QuickModel,
  standingDelay,
} from "@delaywright/engine";
import { UsageError } from "../args/usage.js";
import { EXIT, type Io } from "../io/io.js";
import { jsonText } from "../print/json.js";
import { windowText } from "../print/window-text.js";
import { askedDelay } from "./asked-delay.js";
import { readyPlan } from "./load.js";

/** What `delaywright window` was asked. */
export interface WindowArgs {
  readonly plan: string;
  /** The delay as it is cut [s]; left out: as cut, else as chosen, else the delay to cut. */
  readonly cut?: number;
  readonly json?: boolean;
  readonly model?: QuickModel;
  /** Flights drawn at each point of the map. */
  readonly draws?: number;
  readonly seed?: number;
  /** Threads that fly the draws; left out: as many as the machine has, up to four. */
  readonly workers?: number;
}

/** Odds over wind and tilt for the motor as cut. */
export async function window(args: WindowArgs, io: Io): Promise<number> {
  const ready = await readyPlan(args.plan, io);
  if (!ready.ok) return ready.code;
  const { inputs, context } = ready;
  const { seed = defaultDecideOptions.seed, draws = defaultWindowDraws, model = defaultDecideOptions.model } = args;
  const asked = args.cut === undefined ? undefined : askedDelay("--cut", inputs, args.cut);
  const pool = await io.openPool(args.workers ?? Math.min(io.cores, 4));
  const run: EnsembleRunner = (spec, from, to, onProgress) => pool.run(spec, from, to, onProgress);
  try {
    const delay = asked ?? standingDelay(inputs, await decide(inputs, { seed, model, run }));
    if (delay === null) throw new UsageError("this motor has no delay: there is no window to tell");
    const found = await planWindow(inputs, delay, {
      draws,
      seed,
      model,
      run,
      onProgress: (done, of) => io.progress.update(done, of, "points of the map"),
    });
    io.progress.end();
    const data = windowData(found, inputs, context, { seed, draws, model });
    io.out(args.json ? jsonText(data) : windowText(data, io.colour));
    return data.ends.every(({ wind }) => wind === null) ? EXIT.notGoodEnough : EXIT.done;
  } finally {
    io.progress.end();
    await pool.close();
  }
}
