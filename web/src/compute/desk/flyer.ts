import {
  chunkBytes,
  chunkIn,
  type EnsembleChunk,
  type EnsembleSpec,
  judgeMotor,
  memoryOf,
  type PreparedEnsemble,
  prepareEnsemble,
} from "@delaywright/engine";
import type { FromFlyer, Post, ToFlyer } from "../protocol.js";
import { shortRuns } from "./short-runs.js";
import { Dropped } from "./task.js";

/** The ensemble that runs are flown of. */
interface Current {
  readonly ensemble: number;
  readonly opening: EnsembleSpec["opening"];
  readonly fly: PreparedEnsemble;
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
  let current: Current | null = null;
  let waiting: ToFlyer[] = [];
  let busy = false;
  /** Motors up to this number are not waited for. */
  let left = 0;
  /** Memory that came back. */
  const spare: ArrayBuffer[] = [];

  const roomFor = ({ opening }: Current, from: number, to: number): EnsembleChunk => {
    const bytes = chunkBytes(opening, to - from);
    const memory = spare.pop();
    return memory !== undefined && memory.byteLength >= bytes
      ? chunkIn(opening, from, to, memory)
      : chunkIn(opening, from, to);
  };

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
      const { ensemble, spec } = message;
      current = { ensemble, opening: spec.opening, fly: prepareEnsemble(spec) };
    } else if (message.kind === "whole") {
      const { whole, spec, from, to } = message;
      const chunk = prepareEnsemble(spec)(from, to);
      post({ whole, chunk }, memoryOf(chunk));
    } else if (message.kind === "motor") {
      await judge(message);
    } else if (message.kind === "run" && message.ensemble === current?.ensemble) {
      const { ensemble, from, to } = message;
      const chunk = current.fly(from, to, roomFor(current, from, to));
      post({ ensemble, chunk }, memoryOf(chunk));
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
    if (message.kind === "ensemble") waiting = waiting.filter(({ kind }) => kind !== "run");
    if (message.kind === "run" && message.memory !== undefined) spare.push(message.memory);
    waiting.push(message);
    if (!busy) void work();
  };
}
