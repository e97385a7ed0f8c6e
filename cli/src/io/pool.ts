import { Worker } from "node:worker_threads";
import {
  type Candidate,
  type EnsembleChunk,
  type EnsembleSpec,
  type JudgedMotor,
  joinChunks,
  judgeMotor,
  prepareEnsemble,
  type ShortlistSpec,
} from "@delaywright/engine";
import type { Pool } from "./io.js";

/** Draws that are flown in one go. */
const RUN = 250;

/** The first go is short: whoever asked gets on with other work while the hot code is compiled beside. */
const FIRST_RUN = 50;

/** What a worker is asked: a spec to prepare once, and runs of its draws. */
export interface Task {
  /** Counts the specs; the spec itself comes with its first task only. */
  readonly job: number;
  readonly spec?: EnsembleSpec;
  readonly from: number;
  readonly to: number;
}

/** A motor to judge whole: some hundred draws are too few to be worth splitting. */
export interface MotorTask {
  /** Comes with the first motor of a shortlist only. */
  readonly shortlist?: ShortlistSpec;
  readonly candidate: Candidate;
}

/** Runs of draws that together cover `from` … `to` − 1. */
export function runsOf(from: number, to: number): { from: number; to: number }[] {
  const second = Math.min(to, from + FIRST_RUN);
  const rest = Array.from({ length: Math.ceil((to - second) / RUN) }, (_, i) => ({
    from: second + i * RUN,
    to: Math.min(to, second + (i + 1) * RUN),
  }));
  return [{ from, to: second }, ...rest];
}

/** Flies everything in this thread. */
export function inProcessPool(): Pool {
  return {
    async run(spec, from, to, onProgress) {
      const fly = prepareEnsemble(spec);
      const chunks: EnsembleChunk[] = [];
      for (const run of runsOf(from, to)) {
        chunks.push(fly(run.from, run.to));
        onProgress?.(run.to - from);
        // a breath for whatever waits in this thread, such as the line that fills
        await new Promise((resolve) => setImmediate(resolve));
      }
      return joinChunks(chunks);
    },
    async judge(spec, candidate) {
      await new Promise((resolve) => setImmediate(resolve));
      return judgeMotor(spec, candidate);
    },
    close: () => Promise.resolve(),
  };
}

/**
 * Flies draws in worker threads. A worker that throws or exits rejects the run; `close` ends them all.
 *
 * @param workers number of threads, ≥ 1
 * @param entry the worker's bundle
 */
export function workerPool(workers: number, entry: URL): Pool {
  const threads = Array.from({ length: workers }, () => new Worker(entry));
  let jobs = 0;
  let failed: unknown;
  for (const thread of threads) {
    thread.on("error", (error) => {
      failed ??= error;
    });
    thread.unref();
  }

  const ask = <Answer>(thread: Worker, task: Task | MotorTask): Promise<Answer> =>
    new Promise((resolve, reject) => {
      const settle = (act: () => void): void => {
        thread.off("message", onMessage).off("error", onError).off("exit", onExit);
        thread.unref();
        act();
      };
      const onMessage = (answer: Answer): void => settle(() => resolve(answer));
      const onError = (error: unknown): void => settle(() => reject(error));
      const onExit = (code: number): void =>
        settle(() => reject(failed ?? new Error(`a worker ended with code ${code}`)));
      thread.on("message", onMessage).on("error", onError).on("exit", onExit);
      thread.ref();
      if (failed !== undefined || thread.threadId === -1) onExit(1);
      else thread.postMessage(task);
    });

  const idle = [...threads];
  const queue: ((thread: Worker) => void)[] = [];
  const known = new Map<Worker, ShortlistSpec>();
  const nextIdle = (): Promise<Worker> => {
    const thread = idle.pop();
    return thread === undefined ? new Promise((resolve) => queue.push(resolve)) : Promise.resolve(thread);
  };
  const release = (thread: Worker): void => {
    const next = queue.shift();
    if (next === undefined) idle.push(thread);
    else next(thread);
  };

  const runNow: Pool["run"] = async (spec, from, to, onProgress) => {
    const job = ++jobs;
    const waiting = runsOf(from, to);
    const chunks: EnsembleChunk[] = [];
    let done = 0;
    const work = async (thread: Worker): Promise<void> => {
      let first = true;
      for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
        const task = first ? { job, spec, ...next } : { job, ...next };
        const chunk = await ask<EnsembleChunk>(thread, task).catch((error: unknown) => {
          waiting.length = 0;
          throw error;
        });
        first = false;
        chunks.push(chunk);
        done += chunk.to - chunk.from;
        onProgress?.(done);
      }
    };
    await Promise.all(threads.map(work));
    return joinChunks(chunks);
  };
  let before: Promise<unknown> = Promise.resolve();

  return {
    async judge(spec, candidate) {
      const thread = await nextIdle();
      try {
        const task = known.get(thread) === spec ? { candidate } : { shortlist: spec, candidate };
        known.set(thread, spec);
        return await ask<JudgedMotor>(thread, task);
      } finally {
        release(thread);
      }
    },
    run(spec, from, to, onProgress) {
      // all threads fly one ensemble, then the next
      const mine = before.then(() => runNow(spec, from, to, onProgress));
      before = mine.catch(() => undefined);
      return mine;
    },
    async close() {
      await Promise.all(threads.map((thread) => thread.terminate()));
    },
  };
}
