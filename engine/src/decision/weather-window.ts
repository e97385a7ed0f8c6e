import { padTemperature } from "../air/at-field.js";
import { mostFiresFirst } from "../rules/delay-rules.js";
import type { CutPlan } from "./cut-plan.js";
import { type DecideOptions, defaultDecideOptions } from "./decide-options.js";
import type { Setting } from "./decision.js";
import type { DecisionInputs, Limits } from "./inputs.js";
import { judgeSettings, type OddsOptions, roughFlight, runHere } from "./odds.js";
import { settingsOf, uncutSetTo } from "./settings.js";
import { shiftTo } from "./weather-shift.js";

export interface WeatherWindowOptions extends Pick<DecideOptions, "draws" | "seed" | "model" | "run"> {
  /** The delay that stays as it is [s]. */
  readonly delay: number;
  /** Wind at the height of the reading [m/s], rising, ≥ 0. */
  readonly winds: readonly number[];
  /** Lean of the guide from upright [rad], ≥ 0. */
  readonly tilts: readonly number[];
  /** Told after every point how many of them are done. */
  readonly onProgress?: (done: number, of: number) => void;
}

/** Odds over wind and tilt at one delay: rows by tilt, columns by wind. */
export interface WeatherWindow {
  /** [s] */
  readonly delay: number;
  /** Wind at the height of the reading [m/s]. */
  readonly winds: readonly number[];
  /** Lean of the guide [rad], towards the azimuth `toward` [rad]. */
  readonly tilts: readonly number[];
  readonly toward: number;
  readonly clean: readonly (readonly number[])[];
  readonly holds: readonly (readonly number[])[];
  /**
   * Wind at which the odds fall below the plan's least, by tilt [m/s]; the first wind where they are below it at once, null
   * where they reach it in every wind.
   */
  readonly edges: readonly (number | null)[];
  /** Where the nominal flight comes down in today's wind if nothing opens, by tilt, from the pad [m]; null: it never does. */
  readonly landings: readonly ({ readonly east: number; readonly north: number } | null)[];
}

/** Draws behind each point: its odds are read to a few percent. */
export const defaultWindowDraws = 512;

/** Settings closer than this are the same delay [s]. */
const sameDelay = 1e-6;

/**
 * The weather that a motor, its delay as it is, still bears: odds over wind speed, by tilt of the guide.
 *
 * Every point is judged as `decide` judges a setting, with the same draws, so that only the weather differs between them. The
 * wind grows alike at all heights, from where it blows today; a calm is made to blow from the west. The guide leans as planned,
 * or towards the middle of the field's sector where the plan leaves it upright.
 *
 * @param inputs without issues; a reading of the motor in hand widens the scatter of the delay that it gives
 * @throws what the runner rejects with, at once
 * @example
 * const { edges } = await weatherWindow(inputs, { delay: 9, winds: [0, 2, 4, 6, 8], tilts: [0] });
 * edges[0]; // good up to so many metres a second; null: good in all of them
 */
export async function weatherWindow(inputs: DecisionInputs, options: WeatherWindowOptions): Promise<WeatherWindow> {
  const { delay, winds, tilts, onProgress } = options;
  const { draws, seed, model } = { ...defaultDecideOptions, draws: defaultWindowDraws, ...options };
  const odds: OddsOptions = { draws, seed, flight: { model }, run: options.run ?? runHere };
  const toward = towardOf(inputs);
  const plan = planOf(inputs, delay);
  const rows: Setting[][] = [];
  const landings: WeatherWindow["landings"][number][] = [];
  let done = 0;
  for (const tilt of tilts) {
    const there: DecisionInputs = { ...inputs, guide: { ...inputs.guide, tilt, toward } };
    const near = roughFlight(there, odds.flight);
    const row: Setting[] = [];
    for (const wind of winds) {
      const shift = shiftTo(inputs, wind, padTemperature(inputs.air));
      const { settings } = await judgeSettings(there, [plan], { ...odds, near, shift });
      row.push(settings[0]!);
      done += 1;
      onProgress?.(done, tilts.length * winds.length);
    }
    rows.push(row);
    const { landing } = near.events;
    landings.push(landing && { east: landing.position[0], north: landing.position[1] });
  }
  return {
    delay,
    winds,
    tilts,
    toward,
    clean: rows.map((row) => row.map((setting) => setting.odds.clean)),
    holds: rows.map((row) => row.map((setting) => setting.odds.holds)),
    edges: rows.map((row) => edgeOf(winds, row, inputs.limits)),
    landings,
  };
}

/** The element as it is or as the tool cuts it; else as if it were set to the delay. */
function planOf(inputs: DecisionInputs, delay: number): CutPlan {
  return settingsOf(inputs).find((s) => Math.abs(s.delay - delay) < sameDelay) ?? uncutSetTo(inputs, delay);
}

/** Azimuth towards which the guide leans [rad]. */
function towardOf({ guide, fieldLimits: { tiltSector } }: DecisionInputs): number {
  if (guide.tilt > 0 || tiltSector === undefined) return guide.toward;
  const turn = 2 * Math.PI;
  const width = (((tiltSector.to - tiltSector.from) % turn) + turn) % turn;
  return (tiltSector.from + 0.5 * width) % turn;
}

/** What is left above each least odds; below 0 where it is not reached. A back-up charge is asked how seldom it fires first. */
function sparesOf({ odds, firesFirst }: Setting, limits: Limits): readonly number[] {
  return [
    firesFirst === null ? odds.clean - limits.leastClean : mostFiresFirst - firesFirst,
    odds.holds - limits.leastHolds,
  ];
}

/** Lowest wind at which an odds falls below its least, on straight lines between the points; null where none does. */
function edgeOf(winds: readonly number[], row: readonly Setting[], limits: Limits): number | null {
  const spares = row.map((setting) => sparesOf(setting, limits));
  const first = spares.findIndex((spare) => spare.some((s) => s < 0));
  if (first < 0) return null;
  if (first === 0) return winds[0]!;
  const [from, to] = [winds[first - 1]!, winds[first]!];
  const crossings = spares[first]!.flatMap((after, k) => {
    const before = spares[first - 1]![k]!;
    return after < 0 ? [from + ((to - from) * before) / (before - after)] : [];
  });
  return Math.min(...crossings);
}
