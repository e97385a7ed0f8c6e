import { padTemperature } from "../air/at-field.js";
import { mostFiresFirst } from "../rules/delay-rules.js";
import type { CutPlan } from "./cut-plan.js";
import { type DecideOptions, defaultDecideOptions } from "./decide-options.js";
import type { Check, Setting } from "./decision.js";
import type { DecisionInputs, Limits } from "./inputs.js";
import { judgeSettings, type OddsOptions, roughFlight, runHere } from "./odds.js";
import { rowStop, type WindJudged } from "./row-stop.js";
import { settingsOf, uncutSetTo } from "./settings.js";
import { shiftTo } from "./weather-shift.js";
import type { FirstStop } from "./weather-stop.js";

export interface WeatherWindowOptions extends Pick<DecideOptions, "draws" | "seed" | "model" | "run" | "pause"> {
  /** The delay that stays as it is [s]. */
  readonly delay: number;
  /** Wind at the height of the reading [m/s], rising, ≥ 0. */
  readonly winds: readonly number[];
  /** Lean of the guide from upright [rad], ≥ 0. */
  readonly tilts: readonly number[];
  /** Told after every point how many of them are done. */
  readonly onProgress?: (done: number, of: number) => void;
}

/** Odds that fall below their least: of a clean opening, of holding, or of a back-up charge that does not fire first. */
export type OddsThatEnd = "clean" | "holds" | "fires-first";

/** Up to which wind it stays good at one lean: the odds reach their least, and no rule of wind or lean says stop. */
export interface WindowEnd {
  /** [m/s]; null: in none, not even in the first that was tried. */
  readonly wind: number | null;
  /** Good in every wind that was tried; `wind` then is the last of them. */
  readonly beyond: boolean;
  /** What ends it: odds that fall below their least, or a rule that says stop; null where nothing does. */
  readonly by: OddsThatEnd | "rule" | null;
  /** What the rule finds from there on; null where no rule ends it. */
  readonly check: Check | null;
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
  /** Up to which wind odds and rules together stay good, by tilt: the nearer of both. */
  readonly ends: readonly WindowEnd[];
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
 * The rules that ask for wind or lean are judged as `decide` judges them, up to where the odds end. What no wind changes, as the
 * flyer's certification, is not looked at.
 *
 * @param inputs without issues; a reading of the motor in hand widens the scatter of the delay that it gives
 * @throws what the runner or the pause rejects with, at once
 * @example
 * const { edges, ends } = await weatherWindow(inputs, { delay: 9, winds: [0, 2, 4, 6, 8], tilts: [0] });
 * edges[0]; // the odds are good up to so many metres a second; null: in all of them
 * ends[0]; // { wind: 6.2, by: "rule", check: { id: "wind-limit", … } }: a rule says stop before
 */
export async function weatherWindow(inputs: DecisionInputs, options: WeatherWindowOptions): Promise<WeatherWindow> {
  const { delay, winds, tilts, onProgress, pause } = options;
  const { draws, seed, model } = { ...defaultDecideOptions, draws: defaultWindowDraws, ...options };
  const odds: OddsOptions = { draws, seed, flight: { model }, run: options.run ?? runHere };
  const toward = towardOf(inputs);
  const plan = planOf(inputs, delay);
  const openings = clubStopsFastOpenings(inputs);
  const rows: Setting[][] = [];
  const edges: (number | null)[] = [];
  const ends: WindowEnd[] = [];
  const landings: WeatherWindow["landings"][number][] = [];
  let done = 0;
  for (const tilt of tilts) {
    const there: DecisionInputs = { ...inputs, guide: { ...inputs.guide, tilt, toward } };
    const near = roughFlight(there, odds.flight);
    const row: WindJudged[] = [];
    for (const wind of winds) {
      const shift = shiftTo(inputs, wind, padTemperature(inputs.air));
      row.push({ wind, shift, judged: await judgeSettings(there, [plan], { ...odds, near, shift, openings }) });
      done += 1;
      onProgress?.(done, tilts.length * winds.length);
    }
    const settings = row.map(({ judged }) => judged.settings[0]!);
    const edge = edgeOf(winds, settings, inputs.limits);
    const tried = edge === null ? row : row.slice(0, edge.column + 1);
    const stop = await rowStop(there, tried, { seed, pause });
    rows.push(settings);
    edges.push(edge?.wind ?? null);
    ends.push(endOf(winds, edge, stop));
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
    edges,
    ends,
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

/** Quantiles of the opening speed are drawn only where a club says stop to them. */
function clubStopsFastOpenings({ ruleSet }: DecisionInputs): boolean {
  const limit = typeof ruleSet === "object" ? ruleSet.limits["opening-speed"] : undefined;
  return typeof limit === "object" && typeof limit.stop === "number";
}

/** What is left above each least odds; below 0 where it is not reached. A back-up charge is asked how seldom it fires first. */
function sparesOf({ odds, firesFirst }: Setting, limits: Limits): readonly (readonly [OddsThatEnd, number])[] {
  return [
    firesFirst === null ? ["clean", odds.clean - limits.leastClean] : ["fires-first", mostFiresFirst - firesFirst],
    ["holds", odds.holds - limits.leastHolds],
  ];
}

/** Where the odds end. */
interface OddsEdge {
  readonly wind: number;
  readonly by: OddsThatEnd;
  /** The first wind in which they are below their least. */
  readonly column: number;
}

/** Lowest wind at which an odds falls below its least, on straight lines between the points; null where none does. */
function edgeOf(winds: readonly number[], row: readonly Setting[], limits: Limits): OddsEdge | null {
  const spares = row.map((setting) => sparesOf(setting, limits));
  const column = spares.findIndex((spare) => spare.some(([, s]) => s < 0));
  if (column < 0) return null;
  const [from, to] = [winds[Math.max(0, column - 1)]!, winds[column]!];
  const crossings = spares[column]!.flatMap(([by, after], k): OddsEdge[] => {
    const before = column === 0 ? 0 : spares[column - 1]![k]![1];
    return after < 0 ? [{ wind: from + ((to - from) * before) / (before - after), by, column }] : [];
  });
  return crossings.reduce((a, b) => (b.wind < a.wind ? b : a));
}

/** The nearer of both; the odds where they end alike. */
function endOf(winds: readonly number[], odds: OddsEdge | null, stop: FirstStop | null): WindowEnd {
  const byRule = stop !== null && (odds === null || stop.wind < odds.wind);
  const wind = byRule ? stop.wind : odds?.wind;
  if (wind === undefined) return { wind: winds.at(-1)!, beyond: true, by: null, check: null };
  return {
    wind: wind > winds[0]! ? wind : null,
    beyond: false,
    by: byRule ? "rule" : odds!.by,
    check: byRule ? stop.check : null,
  };
}
