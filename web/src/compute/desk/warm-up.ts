import { type Kind, readValue } from "@delaywright/documents";
import { decide } from "@delaywright/engine";
import { shortRuns } from "./short-runs.js";
import { Dropped } from "./task.js";
import { warmInputs } from "./warm-inputs.js";

/** As many draws as first odds take. */
const DRAWS = 256;

/** What most plans are made of. */
const kinds: readonly Kind[] = ["tool", "field", "motor", "rocket", "plan"];

/**
 * Gets the code of an answer compiled while the page still loads its own: documents are read, and an invented plan is decided as
 * far as first odds, here and in short runs.
 *
 * @param tick resolves after the messages that have come were taken
 * @returns ends it, once there is something to do
 */
export function warmUp(tick: () => Promise<void>): () => void {
  let over = false;
  const pause = async (): Promise<void> => {
    await tick();
    if (over) throw new Dropped();
  };
  const onPart = (): never => {
    throw new Dropped();
  };
  const warm = async (): Promise<void> => {
    for (const kind of kinds) {
      readValue({ kind, version: 1 }, { file: kind });
      await pause();
    }
    await decide(warmInputs, { draws: 2 * DRAWS, stages: [DRAWS], run: shortRuns(pause), onPart });
  };
  // a defect in it is one in every answer, too: those tell it
  warm().catch(() => undefined);
  return () => {
    over = true;
  };
}
