import type { QuickModel, TurningModel } from "../flight/options.js";
import type { Decision } from "./decision.js";
import type { DrawMemory, EnsembleRunner } from "./odds.js";
import type { Pause } from "./opened-places.js";
import type { OtherRocket } from "./over-cut.js";

export interface DecideOptions {
  /** Flights drawn; left out: `defaultDrawsOf` the model; 1 is flown where nothing varies. */
  readonly draws?: number;
  readonly seed?: number;
  readonly model?: TurningModel;
  /** Rockets that an over-cut element might suit. */
  readonly otherRockets?: readonly OtherRocket[];
  /** Who flies the draws: workers, or by default the caller's own thread. */
  readonly run?: EnsembleRunner;
  /** Gives memory for the draws: one decision after another may use the same; left out: new. */
  readonly memory?: DrawMemory;
  /** Rising numbers of draws, each below `draws`, at which `onPart` is told what they say. */
  readonly stages?: readonly number[];
  /**
   * Told an answer from the first draws: `draws` says how many, its flight is a rough one, and home cut, over-cut advice and
   * drivers are left to the whole answer, which is the same with stages and without. A promise that it returns is waited for
   * before anything more is computed here, while draws that were given to workers are flown on.
   */
  readonly onPart?: (part: Decision) => unknown;
  /** Awaited again and again while opened flights are followed down in the caller's own thread: whoever asks for something newer is heard. */
  readonly pause?: Pause;
}

export const defaultDecideOptions = Object.freeze({ draws: 10_000, seed: 1, model: "pitching" as QuickModel });

/** Draws of the rigid model, each of which costs some hundred of the default's. */
export const defaultRigidDraws = 500;

/** How many flights a decision draws unless it is told. */
export function defaultDrawsOf(model: TurningModel): number {
  return model === "rigid" ? defaultRigidDraws : defaultDecideOptions.draws;
}
