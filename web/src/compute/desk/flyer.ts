import { type EnsembleChunk, prepareEnsemble } from "@delaywright/engine";
import type { Flown, Post, ToFlyer } from "../protocol.js";

/** Hands over the memory of a chunk instead of copying it. */
function memoryOf(chunk: EnsembleChunk): ArrayBuffer[] {
  return [chunk.flights, chunk.judged, chunk.samples].map((column) => column.buffer as ArrayBuffer);
}

/**
 * Flies runs of draws for the desk.
 *
 * Runs wait in a queue and are flown one a tick, so that a new ensemble is seen before the runs of the old one are flown.
 *
 * @param post where flown runs go
 * @param tick resolves after the messages that have come were taken
 * @returns takes the desk's messages
 */
export function flyer(post: Post<Flown>, tick: () => Promise<void>): (message: ToFlyer) => void {
  let current: { readonly ensemble: number; readonly fly: ReturnType<typeof prepareEnsemble> } | null = null;
  let waiting: ToFlyer[] = [];
  let busy = false;

  const take = (message: ToFlyer): void => {
    if (message.kind === "ensemble") {
      current = { ensemble: message.ensemble, fly: prepareEnsemble(message.spec) };
    } else if (message.ensemble === current?.ensemble) {
      const chunk = current.fly(message.from, message.to);
      post({ ensemble: message.ensemble, chunk }, memoryOf(chunk));
    }
  };
  const work = async (): Promise<void> => {
    busy = true;
    try {
      await tick();
      for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
        take(next);
        await tick();
      }
    } finally {
      busy = false;
    }
  };
  return (message) => {
    if (message.kind === "ensemble") waiting = [];
    waiting.push(message);
    if (!busy) void work();
  };
}
