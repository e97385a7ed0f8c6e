import { chunkIn, type EnsembleRunner, partOf, prepareEnsemble } from "@delaywright/engine";

/** Draws between two pauses: some milliseconds. */
const RUN = 32;

/**
 * Flies draws in this thread, in short runs.
 *
 * @param pause awaited after each run, so that messages are taken; rejects to call everything off
 */
export function shortRuns(pause: () => Promise<void>): EnsembleRunner {
  return async (spec, from, to, onProgress, into = chunkIn(spec.opening, from, to)) => {
    const fly = prepareEnsemble(spec);
    for (let next = from; next < to; next += RUN) {
      const end = Math.min(to, next + RUN);
      fly(next, end, partOf(into, next, end));
      onProgress?.(end - from);
      await pause();
    }
    return into;
  };
}
