import { descend } from "../flight/descent.js";
import type { TurningModel } from "../flight/options.js";
import type { FlightResult } from "../flight/result.js";
import { bodyFineness } from "../rocket/outline.js";
import { validityWarnings } from "../rocket/validity.js";
import { APOGEE_AIRSPEED, APOGEE_HEIGHT, COAST, type EnsembleChunk, FLEW, flightSize } from "../spread/ensemble.js";
import { choiceChecks, cuttingChecks, flightChecks, oddsChecks } from "./checks.js";
import { choose, reachesLeast } from "./choose.js";
import type { CutPlan } from "./cut-plan.js";
import type { Check, Decision, Setting, ToCut, Warning } from "./decision.js";
import { noScatter } from "./delay-scatter.js";
import { driversOf } from "./drivers.js";
import { homeCutOf, homeWeatherOf } from "./home-cut.js";
import type { DecisionInputs } from "./inputs.js";
import { type EnsembleRunner, judgeSettings, type OddsOptions, runHere } from "./odds.js";
import { type OtherRocket, overCutAdvice } from "./over-cut.js";
import { reasonsFor } from "./reasons.js";
import { achievableSettings, depthPerSecondOf } from "./removals.js";
import { stabilityOf } from "./stability.js";
import { quantile, sortedColumn } from "./summary.js";
import { landingEllipse } from "./unopened.js";

export interface DecideOptions {
  /** Flights drawn; 1 is flown where nothing varies. */
  readonly draws?: number;
  readonly seed?: number;
  readonly model?: TurningModel;
  /** Rockets that an over-cut element might suit. */
  readonly otherRockets?: readonly OtherRocket[];
  /** Who flies the draws: workers, or by default the caller's own thread. */
  readonly run?: EnsembleRunner;
}

export const defaultDecideOptions = Object.freeze({ draws: 2000, seed: 1, model: "pitching" as TurningModel });

/**
 * From a plan's inputs to the delay to cut, with its odds and its cut.
 *
 * The main road: settings that can be made, the nominal flight, every draw flown once and every setting judged on it, the
 * delay to cut, what stands in the way, what the cut at home may be, what an over-cut element needs, what drives the spread,
 * and the checks.
 *
 * @param inputs without issues
 * @param options draws ≥ 1, any integer seed
 * @example
 * const { toCut } = await decide(inputs, { seed: 1 });
 */
export async function decide(inputs: DecisionInputs, options: DecideOptions = {}): Promise<Decision> {
  const { draws, seed, model } = { ...defaultDecideOptions, ...options };
  const run: OddsOptions = { draws, seed, flight: { model }, run: options.run ?? runHere };
  const plans = settingsOf(inputs);
  const judged = await judgeSettings(inputs, plans.length > 0 ? plans : [pluggedPlan], run);
  const { flight, chunk, strength, notFlown } = judged;
  const allowed = cutAllowed(inputs);
  const settings = plans.length > 0 ? judged.settings.map((s, i) => (allowed || i === 0 ? s : withoutCut(s))) : [];

  const best = settings.length > 0 ? choose(settings, inputs.limits) : null;
  const bestSetting = best === null ? null : settings[best.index]!;
  const cuts = (bestSetting?.removed ?? 0) > (settings[0]?.removed ?? 0);
  const homeCut =
    best !== null && cuts && allowed && inputs.cutSoFar === undefined
      ? await homeCutOf(inputs, plans, best.index, judged.rough, run)
      : null;
  const toCut = best === null || bestSetting === null ? null : toCutOf(inputs, settings, best, homeCut);
  const choice = choiceOf(inputs, settings);

  const stability = stabilityOf(flight);
  const tops = topsOf(flight, chunk);
  const checks: Check[] = [
    ...oddsChecks(inputs, settings, toCut, bestSetting, strength.rated, notFlown),
    ...flightChecks(inputs, flight, stability, quantile(tops, 0.95)),
    ...cuttingChecks(inputs, cuts),
    ...choiceChecks(choice?.setting ?? null, inputs),
  ];
  const overCut = await overCutOf(inputs, settings, options.otherRockets ?? [], run);
  if (overCut !== null)
    checks.push({
      code: "element-over-cut",
      verdict: overCut.doNotFly ? "stop" : "look",
      value: overCut.delay,
      limit: null,
      unit: "s",
      source: "the depth read",
    });

  const explained = driversOf(
    chunk,
    inputs.spread,
    seed,
    judged.settings.length,
    best?.index ?? 0,
    best === null ? noScatter : judged.scatters[best.index]!,
    inputs.motor.delay.kind === "none" ? "burnout" : inputs.motor.delay.clock,
  );
  return {
    flight,
    coast: coastOf(flight, chunk),
    apogeeHeight: { p05: quantile(tops, 0.05), p50: quantile(tops, 0.5), p95: quantile(tops, 0.95) },
    apogeeAirspeed: airspeedAtTop(chunk),
    settings,
    toCut,
    choice,
    opened: openedAt(inputs, flight, bestSetting),
    overCut,
    unopened: {
      odds: bestSetting?.odds.grounded ?? 1,
      east: flight.events.landing?.position[0] ?? 0,
      north: flight.events.landing?.position[1] ?? 0,
      ellipse95: landingEllipse(chunk),
    },
    stability,
    drivers: explained.drivers,
    delayShareOfOdds: explained.delayShareOfOdds,
    strength,
    checks,
    warnings: warningsOf(inputs, flight),
    seed,
    draws: judged.draws,
    model,
  };
}

const pluggedPlan: CutPlan = { delay: 0, removed: 0, end: null, spacers: [], depth: 0 };

/** Settings that can be made, longest delay first; none for a motor without delay. */
function settingsOf(inputs: DecisionInputs): CutPlan[] {
  const { delay } = inputs.motor;
  if (delay.kind === "none") return [];
  if (delay.kind === "fixed") return [{ delay: delay.seconds, removed: 0, end: null, spacers: [], depth: 0 }];
  return achievableSettings(delay, inputs.tool, inputs.cutSoFar);
}

/** The motor's instructions are confirmed to allow shortening the delay, with the tool of the plan. */
function cutAllowed(inputs: DecisionInputs): boolean {
  return cuttingChecks(inputs, true).every((check) => check.verdict === "pass");
}

/** A setting whose odds may be shown, but not how it is cut. */
function withoutCut<T extends CutPlan>(plan: T): T {
  return { ...plan, end: null, spacers: [], depth: null };
}

function toCutOf(
  inputs: DecisionInputs,
  settings: readonly Setting[],
  best: { readonly index: number; readonly why: ToCut["why"] },
  homeCut: CutPlan | null,
): ToCut {
  const { limits, spread } = inputs;
  const { odds, delay, removed, end, spacers, depth } = settings[best.index]!;
  return {
    delay,
    removed,
    end,
    spacers,
    depth,
    reachesLeast: reachesLeast(settings[best.index]!, limits),
    reachesHolds: odds.holds >= limits.leastHolds,
    why: best.why,
    ...reasonsFor(settings, best.index, limits, spread.dragScale < 0.15),
    homeCut,
    homeWeather: homeCut === null ? null : homeWeatherOf(inputs),
  };
}

function choiceOf(inputs: DecisionInputs, settings: readonly Setting[]): Decision["choice"] {
  const { choice, cutSoFar, motor, tool } = inputs;
  if (choice === undefined) return null;
  // an element already cut is what was meant if its reading does not deny it
  const depthPerSecond = motor.delay.kind === "adjustable" ? depthPerSecondOf(motor.delay, tool) : undefined;
  const readingError =
    cutSoFar === undefined || depthPerSecond === undefined ? 0 : cutSoFar.depthError / depthPerSecond;
  const setting = settings.find(
    (s, i) => Math.abs(s.delay - choice.delay) < Math.max(1e-3, i === 0 ? 2 * readingError : 0),
  );
  return setting === undefined ? null : { setting, reason: choice.reason ?? null };
}

async function overCutOf(
  inputs: DecisionInputs,
  settings: readonly Setting[],
  others: readonly OtherRocket[],
  run: OddsOptions,
) {
  const asItIs = settings[0];
  if (inputs.cutSoFar === undefined || inputs.cutSoFar.removedDepth <= 0 || asItIs === undefined) return null;
  const good = (s: Setting): boolean => reachesLeast(s, inputs.limits) && s.odds.holds >= inputs.limits.leastHolds;
  if (good(asItIs) || asItIs.odds.earlyFast <= asItIs.odds.lateFast) return null;
  return overCutAdvice(inputs, asItIs, settings.slice(1).some(good), others, run);
}

function coastOf(flight: FlightResult, chunk: EnsembleChunk): Decision["coast"] {
  const { apogee, burnout } = flight.events;
  const coasts = sortedColumn(flown(chunk), flightSize, COAST);
  const nominal = apogee !== null && burnout !== null ? apogee.time - burnout.time : 0;
  if (coasts.length === 0) return { nominal, p05: nominal, p50: nominal, p95: nominal };
  return { nominal, p05: quantile(coasts, 0.05), p50: quantile(coasts, 0.5), p95: quantile(coasts, 0.95) };
}

/** Heights of the top over the draws that flew, sorted; the nominal one where none did. */
function topsOf(flight: FlightResult, chunk: EnsembleChunk): Float64Array {
  const tops = sortedColumn(flown(chunk), flightSize, APOGEE_HEIGHT);
  return tops.length > 0 ? tops : Float64Array.of(flight.events.apogee?.position[2] ?? 0);
}

function airspeedAtTop(chunk: EnsembleChunk): Decision["apogeeAirspeed"] {
  const speeds = sortedColumn(flown(chunk), flightSize, APOGEE_AIRSPEED);
  return speeds.length === 0 ? { p50: 0, p95: 0 } : { p50: quantile(speeds, 0.5), p95: quantile(speeds, 0.95) };
}

/** Rows of the draws that flew. */
function flown({ flights }: EnsembleChunk): Float64Array {
  const rows = new Float64Array(flights.length);
  let count = 0;
  for (let o = 0; o < flights.length; o += flightSize) {
    if (flights[o + FLEW] !== 1) continue;
    rows.set(flights.subarray(o, o + flightSize), count);
    count += flightSize;
  }
  return rows.subarray(0, count);
}

/** The nominal flight, opened at the delay to cut. */
function openedAt(inputs: DecisionInputs, flight: FlightResult, setting: Setting | null): Decision["opened"] {
  const { events, model } = flight;
  if (setting === null || events.burnout === null || events.landing === null) return null;
  const { delay } = inputs.motor;
  const burnout = delay.kind !== "none" && delay.clock === "ignition" ? model.burn.end : events.burnout.time;
  const time = burnout + setting.delay + inputs.recovery.lineStretch;
  if (time >= events.landing.time) return null;
  return descend(model, flight.at(time), 1e-6);
}

function warningsOf(inputs: DecisionInputs, flight: FlightResult): Warning[] {
  const warnings: Warning[] = validityWarnings({
    mach: flight.peaks().highestMach,
    fineness: bodyFineness(inputs.rocket),
    ...(flight.events.guideExit === null ? {} : { angleOfAttack: stabilityOf(flight).guideExitAtAngle.angle }),
  });
  const note = (code: Warning["code"], value: number | null = null, limit: number | null = null) =>
    warnings.push({ code, value, limit });
  const top = flight.events.apogee?.position[2] ?? 0;
  if (
    inputs.wind.kind === "power" &&
    top > inputs.wind.gradientHeight &&
    Math.hypot(inputs.wind.east, inputs.wind.north) > 0
  )
    note("surface-wind-carried-up", top, inputs.wind.gradientHeight);
  if (inputs.rocket.inertiaSource === "estimated") note("inertia-estimated");
  if (inputs.spread.dragScale >= 0.15) note("drag-not-learned", inputs.spread.dragScale);
  if (flight.options.model === "pitching" && (flight.events.handOver?.time ?? 0) >= (flight.events.apogee?.time ?? 0))
    note("never-handed-over");
  if (inputs.tool === undefined && inputs.motor.delay.kind === "adjustable") note("no-tool");
  return warnings;
}
