import { type EnsembleChunk, judgeMotor, prepareEnsemble } from "@delaywright/engine";
import type { FromFlyer, Post, ToFlyer } from "../protocol.js";
import { shortRuns } from "./short-runs.js";
import { Dropped } from "./task.js";

/** Hands over the memory of a chunk instead of copying it. */
function memoryOf(chunk: EnsembleChunk): ArrayBuffer[] {
  return [chunk.flights, chunk.judged, chunk.samples].map((column) => column.buffer as ArrayBuffer);
}

/**
 * Flies runs of draws and short ensembles for the desk, and judges motors.
 *
 * All wait in a queue; runs are flown one a tick, and a motor's draws in short runs, so that word of something newer is seen before
 * the runs of the old one are flown, and a motor that nobody waits for any more is left at once.
 *
 * @param post where flown runs and judged motors go
 * @param tick resolves after the messages that have come were taken
 * @returns takes the desk's messages
 */
export function flyer(post: Post<FromFlyer>, tick: () => Promise<void>): (message: ToFlyer) => void {
  let current: { readonly ensemble: number; readonly fly: ReturnType<typeof prepareEnsemble> } | null = null;
  let waiting: ToFlyer[] = [];
  let busy = false;
  /** Motors up to this number are not waited for. */
  let left = 0;

  const judge = async ({ number, spec, candidate }: Extract<ToFlyer, { kind: "motor" }>): Promise<void> => {
    const pause = async (): Promise<void> => {
      await tick();
      if (number <= left) throw new Dropped();
    };
    try {
      await pause();
      post({ number, judged: await judgeMotor(spec, candidate, shortRuns(pause)) });
    } catch (error) {
      if (!(error instanceof Dropped)) throw error;
    }
  };
  const take = async (message: ToFlyer): Promise<void> => {
    if (message.kind === "ensemble") {
      current = { ensemble: message.ensemble, fly: prepareEnsemble(message.spec) };
    } else if (message.kind === "whole") {
      const { whole, spec, from, to } = message;
      const chunk = prepareEnsemble(spec)(from, to);
      post({ whole, chunk }, memoryOf(chunk));
    } else if (message.kind === "motor") {
      await judge(message);
    } else if (message.kind === "run" && message.ensemble === current?.ensemble) {
      const chunk = current.fly(message.from, message.to);
      post({ ensemble: message.ensemble, chunk }, memoryOf(chunk));
    }
  };
  const work = async (): Promise<void> => {
    busy = true;
    try {
      await tick();
      for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
        await take(next);
        await tick();
      }
    } finally {
      busy = false;
    }
  };
  return (message) => {
    if (message.kind === "leave") {
      left = message.number;
      return;
    }
    if (message.kind === "stop") {
      waiting = waiting.filter(({ kind }) => kind !== "run" && kind !== "whole");
      return;
    }
    if (message.kind === "ensemble") waiting = [];
    waiting.push(message);
    if (!busy) void work();
  };
}
