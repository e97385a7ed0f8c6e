import { join } from "node:path";
import { type Loaded, loadAny, loadPlan, motorShelf, openPlan, shortlistData } from "@delaywright/documents";
import { type Aim, defaultShortlistOptions, type QuickModel, shortlist as shortlistMotors } from "@delaywright/engine";
import { UsageError } from "../args/usage.js";
import { EXIT, type Io } from "../io/io.js";
import { issuesText } from "../print/issues.js";
import { jsonText } from "../print/json.js";
import { shortlistText } from "../print/shortlist-text.js";

/** What `delaywright shortlist` was asked. */
export interface ShortlistArgs {
  readonly plan: string;
  /** The folder with the motors. */
  readonly motors: string;
  readonly aim: Aim;
  readonly json?: boolean;
  readonly model?: QuickModel;
  readonly draws?: number;
  readonly seed?: number;
  /** Threads that judge motors; left out: one for a few motors, then as many as the machine has, up to four. */
  readonly workers?: number;
}

/** Up to so many draws in all one thread is done before others have started. */
const ONE_WORKER_DRAWS = 4000;

async function documentsIn(folder: string, io: Io): Promise<(readonly [string, Loaded])[]> {
  const names = (await io.files.list(folder)).filter((name) => name.endsWith(".json"));
  const loaded: (readonly [string, Loaded])[] = [];
  for (const name of names) {
    const path = join(folder, name);
    loaded.push([path, await loadAny(path, io.files)]);
  }
  return loaded;
}

/** Every motor of a folder against a plan: refused with value and limit, or ranked by the delay to cut and its odds. */
export async function shortlist(args: ShortlistArgs, io: Io): Promise<number> {
  const { parts, issues } = await loadPlan(args.plan, io.files);
  const opened = parts === undefined ? undefined : openPlan(parts);
  if (parts === undefined || opened === undefined || !opened.ok) {
    io.err(issuesText(opened === undefined || opened.ok ? issues : opened.issues));
    return EXIT.wrongInput;
  }
  const shelf = motorShelf(parts, await documentsIn(args.motors, io));
  const { candidates, unread } = shelf;
  if (candidates.length + unread.length === 0)
    throw new UsageError(
      `--motors: no motor found in ${JSON.stringify(args.motors)}; a folder with motors' documents is accepted, for example --motors motors`,
    );
  const draws = args.draws ?? defaultShortlistOptions.draws;
  const many = candidates.length * draws > ONE_WORKER_DRAWS;
  const workers = args.workers ?? (many ? Math.min(io.cores, 4) : 1);
  const pool = await io.openPool(workers);
  try {
    const list = await shortlistMotors(candidates, opened.plan, {
      aim: args.aim,
      draws,
      ...(args.seed === undefined ? {} : { seed: args.seed }),
      ...(args.model === undefined ? {} : { model: args.model }),
      run: pool.judge,
      lanes: workers,
      onRow: (_, done, of) => io.progress.update(done, of, "motors"),
    });
    io.progress.end();
    const data = shortlistData(list, shelf, opened.context, opened.plan.limits);
    io.out(args.json ? jsonText(data) : shortlistText(data, io.colour));
    return data.ranked.length === 0 ? EXIT.notGoodEnough : EXIT.done;
  } finally {
    io.progress.end();
    await pool.close();
  }
}
