import { type Decision, type DecisionInputs, type EnsembleRunner, weatherWindow } from "@delaywright/engine";
import type { PlanWindow } from "../told.js";

/** Winds tried [m/s]: beyond the last one no code lets anybody fly. */
const WINDS = Array.from({ length: 13 }, (_, i) => i);

const degrees = Math.PI / 180;
/** Leans of the guide tried [rad], beside today's own. */
const TILTS = [0, 2.5, 5, 7.5, 10].map((tilt) => tilt * degrees);

/**
 * Odds over wind and tilt at the delay as it stands: as cut, else as chosen, else the delay to cut.
 *
 * @returns null for a motor without delay
 */
export async function windowOf(
  inputs: DecisionInputs,
  { settings, choice, toCut, seed, model }: Decision,
  run: EnsembleRunner,
): Promise<PlanWindow | null> {
  const asCut = inputs.cutSoFar === undefined ? undefined : settings[0];
  const delay = (asCut ?? choice?.setting ?? toCut)?.delay;
  if (delay === undefined) return null;
  const tilts = [...new Set([...TILTS, inputs.guide.tilt])].sort((a, b) => a - b);
  const window = await weatherWindow(inputs, { delay, winds: WINDS, tilts, seed, model, run });
  return {
    ...window,
    edges: window.edges.map((edge) => (edge === null ? WINDS.at(-1)! : edge <= WINDS[0]! ? null : edge)),
    beyond: window.edges.map((edge) => edge === null),
  };
}
