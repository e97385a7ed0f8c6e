import type { Decision } from "./decision.js";
import type { DecisionInputs } from "./inputs.js";
import { type WeatherWindow, type WeatherWindowOptions, weatherWindow } from "./weather-window.js";

/** Winds tried [m/s]: beyond the last one no code lets anybody fly. */
const winds = Array.from({ length: 13 }, (_, i) => i);

/** Leans of the guide tried, beside today's own [rad]. */
const usualTilts = [0, 2.5, 5, 7.5, 10].map((degrees) => (degrees * Math.PI) / 180);

/** Leans closer than this are the same [rad]. */
const sameTilt = 1e-9;

/** The weather window of a plan: odds over the winds and leans that may be met, and what ends them. */
export interface PlanWindow extends Omit<WeatherWindow, "edges"> {
  /** Wind up to which both odds reach their least, by tilt [m/s]; null: in none, not even a calm. */
  readonly edges: readonly (number | null)[];
  /** By tilt: the odds are good in every wind that was tried; the edge then is the last of them. */
  readonly beyond: readonly boolean[];
}

/**
 * The delay as it stands: as cut, else as chosen, else the delay to cut.
 *
 * @returns [s]; null for a motor without delay
 */
export function standingDelay(
  { cutSoFar }: Pick<DecisionInputs, "cutSoFar">,
  { settings, choice, toCut }: Pick<Decision, "settings" | "choice" | "toCut">,
): number | null {
  const asCut = cutSoFar === undefined ? undefined : settings[0];
  return (asCut ?? choice?.setting ?? toCut)?.delay ?? null;
}

/**
 * Odds over winds of 0 to 12 m/s and leans of the guide up to 10 degrees, today's own among them, at one delay.
 *
 * @param inputs without issues
 * @param delay [s], ≥ 0; `standingDelay` gives the plan's own
 * @param options as for `weatherWindow`
 * @throws what the runner or the pause rejects with, at once
 * @example
 * const { ends } = await planWindow(inputs, 9);
 * ends[0]?.wind; // good up to so many metres a second; null: not even in a calm
 */
export async function planWindow(
  inputs: DecisionInputs,
  delay: number,
  options: Omit<WeatherWindowOptions, "delay" | "winds" | "tilts"> = {},
): Promise<PlanWindow> {
  const { tilt: today } = inputs.guide;
  const others = usualTilts.filter((tilt) => Math.abs(tilt - today) > sameTilt);
  const tilts = [...others, today].sort((a, b) => a - b);
  const window = await weatherWindow(inputs, { ...options, delay, winds, tilts });
  return {
    ...window,
    edges: window.edges.map((edge) => (edge === null ? winds.at(-1)! : edge <= winds[0]! ? null : edge)),
    beyond: window.edges.map((edge) => edge === null),
  };
}
