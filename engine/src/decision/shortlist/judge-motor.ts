import { InputError } from "../../issues.js";
import type { RuleFacts } from "../../rules/facts.js";
import { APOGEE_HEIGHT } from "../../spread/ensemble-chunk.js";
import { choose, reachesLeast } from "../choose.js";
import type { Setting } from "../decision.js";
import { band, flownColumn } from "../flight-figures.js";
import type { DecisionInputs } from "../inputs.js";
import { type Landed, landedOf } from "../landed.js";
import { type EnsembleRunner, type JudgedSettings, judgeSettings, roughFlight, runHere } from "../odds.js";
import { openedPlaces } from "../opened-places.js";
import { reasonsFor } from "../reasons.js";
import { cuttingFacts, flightFacts, placeFacts } from "../rule-facts.js";
import { cutAllowed, pluggedPlan, settingsOf, withoutCut } from "../settings.js";
import { stabilityOf } from "../stability.js";
import { unopenedPlaces } from "../unopened.js";
import { type Candidate, candidateIssues, planWith } from "./candidate.js";
import { afterDraws, afterLandings, afterLaunch, type Findings, findingsOf } from "./findings.js";
import type { DrawnFigures, JudgedMotor, LaunchFigures, MotorCut, Refusal } from "./judged-motor.js";
import type { ShortlistSpec } from "./spec.js";
import { looked } from "./unflown.js";
import { broken, refusedFor, together } from "./verdicts.js";

function drawnOf(inputs: DecisionInputs, judged: JudgedSettings, settings: readonly Setting[]): DrawnFigures {
  const heights = flownColumn(judged.chunk, APOGEE_HEIGHT);
  const top = judged.flight.events.apogee?.position[2] ?? 0;
  const height = heights.length === 0 ? { p05: top, p50: top, p95: top } : band(heights);
  return { height, toCut: cutOf(inputs, settings), draws: judged.draws };
}

function cutOf({ limits }: DecisionInputs, settings: readonly Setting[]): MotorCut | null {
  if (settings.length === 0) return null;
  const { index, why } = choose(settings, limits);
  const setting = settings[index]!;
  return {
    ...setting,
    why,
    reachesLeast: reachesLeast(setting, limits),
    reachesHolds: setting.odds.holds >= limits.leastHolds,
  };
}

/** What the draws say of odds and cutting; a motor without delay has none. */
function factsOfDraws(
  inputs: DecisionInputs,
  { toCut }: DrawnFigures,
  settings: readonly Setting[],
  drawsNotFlown: number,
): RuleFacts {
  const { leastHolds, leastClean } = inputs.limits;
  const cuts = toCut !== null && toCut.removed > (settings[0]?.removed ?? 0);
  return {
    ...cuttingFacts(inputs, cuts ? toCut.removed : null),
    drawsNotFlown,
    bestHolds: toCut === null ? null : Math.max(...settings.map(({ odds }) => odds.holds)),
    clean: toCut === null || toCut.firesFirst !== null ? null : toCut.odds.clean,
    firesFirst: toCut?.firesFirst ?? null,
    leastHolds,
    leastClean,
  };
}

/**
 * Draws whose way down is followed, half of those that `decide` follows: they take about as long as all 500 draws of a motor,
 * and tell one that drifts off the field from one that does not.
 */
const followedDraws = 64;

/** Where opened draws come down; null where the field does not say where they may. */
async function openedLandings(
  inputs: DecisionInputs,
  toCut: MotorCut | null,
  judged: JudgedSettings,
  { seed }: ShortlistSpec,
): Promise<Landed | null> {
  const { boundary, keepOff = [] } = inputs.fieldLimits;
  if (toCut === null || (boundary === undefined && keepOff.length === 0)) return null;
  return landedOf(await openedPlaces(inputs, toCut, judged, { seed }, followedDraws), inputs.fieldLimits);
}

/** Why no delay is good enough stands beside the refusal: too short, too long, lean … */
function withReasons(inputs: DecisionInputs, settings: readonly Setting[], findings: Findings): Findings {
  if (settings.length === 0) return findings;
  const { reasons } = reasonsFor(settings, choose(settings, inputs.limits).index, inputs.limits, true);
  const ofDelay: readonly Refusal["code"][] = ["no-setting-holds", "below-least-clean", "fires-before-electronics"];
  return {
    ...findings,
    refusals: findings.refusals.map((each) => (ofDelay.includes(each.code) ? { ...each, details: reasons } : each)),
  };
}

/**
 * Judges one motor against a plan: what needs no flight first, then the nominal flight, then all draws, then where those land
 * that are followed down. What is enough to refuse it ends it there.
 *
 * Odds, openings and heights are those that `decide` gives with the same draws and seed, to the bit; guide exit and margins
 * are of a rougher nominal flight, and differ from its by less than 1e-4.
 *
 * @param spec the plan and what it is judged by
 * @param candidate the motor
 * @param run who flies the draws; left out: the caller's own thread
 * @throws what the runner rejects with, at once; never for a motor that is wrong: it is told as broken
 * @example
 * const judged = await judgeMotor(spec, { id: "H150", motor });
 * if (judged.outcome === "ranked") judged.drawn.toCut?.odds.clean;
 */
export async function judgeMotor(
  spec: ShortlistSpec,
  candidate: Candidate,
  run: EnsembleRunner = runHere,
): Promise<JudgedMotor> {
  const issues = candidateIssues(candidate);
  if (issues.length > 0) return broken(candidate, issues);
  try {
    return await judgeRight(spec, candidate, run);
  } catch (error) {
    if (error instanceof InputError) return broken(candidate, error.issues);
    throw error;
  }
}

async function judgeRight(spec: ShortlistSpec, candidate: Candidate, run: EnsembleRunner): Promise<JudgedMotor> {
  const { draws, seed, plan } = spec;
  const before = looked(spec, candidate);
  const unflown = refusedFor(before.known, before.findings);
  if (unflown !== null) return unflown;

  const inputs = planWith(plan, candidate);
  const flight = { model: spec.model };
  const near = roughFlight(inputs, flight);
  const stability = stabilityOf(near);
  const launchFacts = flightFacts(inputs, near, stability, Number.NaN);
  const launch: LaunchFigures = {
    guideExitSpeed: launchFacts.guideExitSpeed ?? 0,
    marginAtGuideExit: stability.guideExit.calibres,
    marginAtBurnout: stability.burnout.calibres,
  };
  const launched = findingsOf(launchFacts, afterLaunch, plan.ruleSet);
  const refusedAtLaunch = refusedFor({ ...before.known, launch }, launched);
  if (refusedAtLaunch !== null) return refusedAtLaunch;
  if (near.ended !== "landed")
    return broken(candidate, [{ code: near.ended, path: "flight", found: near.ended, accepted: "landed" }]);

  const plans = settingsOf(inputs);
  const judged = await judgeSettings(inputs, plans.length > 0 ? plans : [pluggedPlan], {
    draws,
    seed,
    flight,
    run,
    near,
    openings: true,
  });
  const allowed = cutAllowed(inputs);
  const settings = plans.length > 0 ? judged.settings.map((s, i) => (allowed || i === 0 ? s : withoutCut(s))) : [];
  const drawn = drawnOf(inputs, judged, settings);
  const unopened = landedOf(unopenedPlaces(judged.chunk), inputs.fieldLimits);
  const opens = (drawn.toCut?.odds.grounded ?? 1) < 1;
  const facts: RuleFacts = {
    ...flightFacts(inputs, near, stability, drawn.height.p95),
    ...factsOfDraws(inputs, drawn, settings, judged.notFlown),
    ...placeFacts(inputs, { opened: null, unopened }, opens),
  };
  const ofDraws = withReasons(inputs, settings, findingsOf(facts, afterDraws, plan.ruleSet));
  const known = { ...before.known, launch, drawn };
  const refusedByDraws = refusedFor(known, ofDraws);
  if (refusedByDraws !== null) return refusedByDraws;

  const opened = opens ? await openedLandings(inputs, drawn.toCut, judged, spec) : null;
  const landings = findingsOf(placeFacts(inputs, { opened, unopened }, opens), afterLandings, plan.ruleSet);
  const refused = refusedFor(known, landings);
  if (refused !== null) return refused;

  const { looks, notChecked } = together(before.findings, launched, ofDraws, landings);
  const { figures } = before.known;
  const { id, price } = candidate;
  return { outcome: "ranked", id, price: price ?? null, figures, launch, drawn, looks, notChecked };
}
