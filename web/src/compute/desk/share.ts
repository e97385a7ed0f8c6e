import {
  chunkIn,
  type EnsembleChunk,
  type EnsembleSpec,
  memoryOf,
  type PreparedEnsemble,
  partOf,
  prepareEnsemble,
  putChunk,
} from "@delaywright/engine";
import type { FromFlyer, ToFlyer } from "../protocol.js";
import { Judges } from "./judges.js";
import type { Task } from "./task.js";
import { Wholes } from "./wholes.js";

/** One flyer as the desk sees it. */
export interface FlyerPort {
  post(message: ToFlyer, transfer?: readonly ArrayBuffer[]): void;
  /** Where its flown runs and judged motors go. */
  listen(listener: (message: FromFlyer) => void): void;
}

/** How runs are cut. */
export interface ShareOptions {
  /** Resolves after the messages that have come were taken. */
  readonly tick: () => Promise<void>;
  /** The time now [ms]. */
  readonly now: () => number;
}

/** How one ensemble is flown. */
export interface FlyOptions {
  /** Told the draws flown so far, the first one's number included. */
  readonly onProgress?: (done: number) => void;
  /** What the desk itself waits for before it flies any; the flyers do not. */
  readonly after?: Promise<void> | undefined;
  /** Nobody waits for it: whatever is asked meanwhile is seen sooner. */
  readonly aside?: boolean;
  /** Filled and returned; left out: new. */
  readonly into?: EnsembleChunk | undefined;
}

/** Time that one run should take [ms]: a newer change is seen that soon. */
const RUN_TIME = 5;
/** The same of what nobody waits for. */
const ASIDE_TIME = 2;
const SHORTEST_RUN = 8;
const LONGEST_RUN = 192;
/** Fewer draws are not worth the tables of more than one. */
const WORTH_SHARING = 128;
/** Runs that wait at a flyer, so that it need not wait for the desk. */
const AHEAD = 2;

interface Flying {
  readonly ensemble: number;
  readonly taken: (chunk: EnsembleChunk, flyer: number) => void;
}

/** Shares the draws of ensembles between the desk and its flyers, in short runs. */
export class Share {
  /** Those who judge motors: the same hands. */
  readonly judges: Judges;
  private readonly wholes: Wholes;
  private readonly flyers: readonly FlyerPort[];
  private readonly options: ShareOptions;
  /** What is prepared here, and the number by which flyers know it. */
  private readonly prepared = new WeakMap<EnsembleSpec, PreparedEnsemble>();
  private readonly numbers = new WeakMap<EnsembleSpec, number>();
  private readonly known: number[];
  private ensembles = 0;
  private flying: Flying | null = null;
  /** Draws that were flown here in one millisecond. */
  private pace = 10;

  constructor(flyers: readonly FlyerPort[], options: ShareOptions) {
    this.flyers = flyers;
    this.options = options;
    this.known = flyers.map(() => 0);
    this.judges = new Judges(flyers, options.tick);
    this.wholes = new Wholes(flyers);
    flyers.forEach((flyer, i) => {
      flyer.listen((message) => {
        if ("judged" in message) this.judges.hear(message);
        else if ("whole" in message) this.wholes.hear(message);
        else if (this.flying?.ensemble === message.ensemble) this.flying.taken(message.chunk, i);
      });
    });
  }

  /**
   * Flies draws `from` … `to` − 1 of an ensemble, whoever is free; the figures do not depend on who flew which.
   *
   * @throws {Dropped} as soon as the task is dropped
   */
  async fly(
    task: Task,
    spec: EnsembleSpec,
    from: number,
    to: number,
    { onProgress, after, aside = false, into = chunkIn(spec.opening, from, to) }: FlyOptions = {},
  ): Promise<EnsembleChunk> {
    task.check();
    if (to - from < WORTH_SHARING && this.wholes.any) {
      const chunk = await this.wholes.fly(task, spec, from, to);
      onProgress?.(to);
      return chunk;
    }
    const { flyers } = this;
    const runTime = aside ? ASIDE_TIME : RUN_TIME;
    let next = from;
    let done = from;
    let wake: () => void = () => undefined;
    const cut = (): { from: number; to: number } | null => {
      if (next >= to) return null;
      const fair = Math.ceil((to - next) / (4 * (flyers.length + 1)));
      const size = Math.max(SHORTEST_RUN, Math.min(LONGEST_RUN, Math.round(runTime * this.pace), fair));
      const run = { from: next, to: Math.min(to, next + size) };
      next = run.to;
      return run;
    };
    const taken = (run: { readonly from: number; readonly to: number }): void => {
      done += run.to - run.from;
      onProgress?.(done);
    };
    const ensemble = this.numberOf(spec);
    const give = (i: number, [memory]: readonly ArrayBuffer[] = []): void => {
      const run = cut();
      if (run === null) return;
      if (memory === undefined) flyers[i]!.post({ kind: "run", ensemble, ...run });
      else flyers[i]!.post({ kind: "run", ensemble, ...run, memory }, [memory]);
    };
    const flying: Flying = {
      ensemble,
      taken: (chunk, i) => {
        putChunk(into, chunk);
        taken(chunk);
        give(i, memoryOf(chunk));
        if (done >= to) wake();
      },
    };
    this.flying = flying;
    const leave = (): void => {
      if (this.flying === flying) this.flying = null;
    };
    const off = task.onDrop(() => {
      leave();
      // their hands are free for what is asked next before the desk has read it
      for (const flyer of this.flyers) flyer.post({ kind: "stop" });
      wake();
    });
    try {
      flyers.forEach((flyer, i) => {
        if (this.known[i] !== ensemble) flyer.post({ kind: "ensemble", ensemble, spec });
        this.known[i] = ensemble;
      });
      for (let ahead = 0; ahead < AHEAD; ahead++) for (const i of flyers.keys()) give(i);
      // whoever asked gets on with what needs no draws, such as the nominal flight
      await this.options.tick();
      await after;
      task.check();
      const fly = this.preparedHere(spec);
      for (let run = cut(); run !== null; run = cut()) {
        const start = this.options.now();
        fly(run.from, run.to, partOf(into, run.from, run.to));
        const spent = Math.max(0.1, this.options.now() - start);
        this.pace += 0.3 * ((run.to - run.from) / spent - this.pace);
        taken(run);
        await this.options.tick();
        task.check();
      }
      if (done < to)
        await new Promise<void>((resolve) => {
          wake = resolve;
        });
      task.check();
      return into;
    } finally {
      off();
      leave();
    }
  }

  private numberOf(spec: EnsembleSpec): number {
    const known = this.numbers.get(spec) ?? ++this.ensembles;
    this.numbers.set(spec, known);
    return known;
  }

  private preparedHere(spec: EnsembleSpec): PreparedEnsemble {
    const fly = this.prepared.get(spec) ?? prepareEnsemble(spec);
    this.prepared.set(spec, fly);
    return fly;
  }
}
