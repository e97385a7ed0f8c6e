import { type DecideOptions, defaultDecideOptions } from "./decide-options.js";
import type { Odds } from "./decision.js";
import type { DecisionInputs } from "./inputs.js";
import { judgeSettings, roughFlight, runHere } from "./odds.js";
import { uncutSetTo } from "./settings.js";

/** Odds at a delay that a tool may be unable to make. */
export interface DelayOdds {
  /** [s] */
  readonly delay: number;
  readonly odds: Odds;
  /** Airspeed at opening [m/s]; null where every flight is grounded. */
  readonly openingSpeed: { readonly p05: number; readonly p50: number; readonly p95: number } | null;
}

/** How the odds over delays are found: as `decide` finds its own. */
export type OddsOverDelayOptions = Pick<DecideOptions, "draws" | "seed" | "model" | "run">;

/**
 * Odds over delays, those too that no tool can make.
 *
 * All are judged on one ensemble, and for a delay that can be cut they are the odds that `decide` gives with the same draws
 * and seed. The scatter is that of an uncut element set to the delay: the tool's error widens it where something has to be
 * taken out, a reading does not.
 *
 * @param inputs without issues
 * @param delays any order [s], ≥ 0; some 40 cost little more than one
 * @returns one entry a delay, in their order; openings are sampled, one at least a draw
 * @throws what the runner rejects with
 * @example
 * const pins = await oddsOverDelay(inputs, [6, 6.5, 7, 7.5, 8], { draws: 2048 });
 * pins.map(({ delay, odds }) => [delay, odds.clean]);
 */
export async function oddsOverDelay(
  inputs: DecisionInputs,
  delays: readonly number[],
  options: OddsOverDelayOptions = {},
): Promise<readonly DelayOdds[]> {
  if (delays.length === 0) return [];
  const { draws, seed, model } = { ...defaultDecideOptions, ...options };
  const flight = { model };
  const plans = delays.map((delay) => uncutSetTo(inputs, delay));
  const { settings } = await judgeSettings(inputs, plans, {
    draws,
    seed,
    flight,
    run: options.run ?? runHere,
    near: roughFlight(inputs, flight),
    openings: true,
  });
  return settings.map(({ delay, odds, openingSpeed }) => ({
    delay,
    odds,
    openingSpeed: openingSpeed && { p05: openingSpeed.p05, p50: openingSpeed.p50, p95: openingSpeed.p95 },
  }));
}
