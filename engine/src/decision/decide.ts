import { checksOf } from "./checks.js";
import { type Chosen, choose, reachesLeast } from "./choose.js";
import type { CutPlan } from "./cut-plan.js";
import { type DecideOptions, defaultDecideOptions, defaultDrawsOf } from "./decide-options.js";
import type { Decision, OverCut, Setting, ToCut } from "./decision.js";
import { noScatter } from "./delay-scatter.js";
import { type Drivers, driversOf } from "./drivers.js";
import { flightFigures } from "./flight-figures.js";
import { homeCutOf, homeWeatherOf, longestOfWeather } from "./home-cut.js";
import type { DecisionInputs } from "./inputs.js";
import { type Landed, landedOf } from "./landed.js";
import { type JudgedSettings, judgeSettings, type OddsOptions, runHere } from "./odds.js";
import { openedAt } from "./opened-at.js";
import { openedPlacesOnce } from "./opened-places.js";
import { type OtherRocket, overCutAdvice } from "./over-cut.js";
import { packingBy } from "./packing-of-decision.js";
import { reasonsFor } from "./reasons.js";
import { depthPerSecondOf } from "./removals.js";
import { cuttingFacts, flightFacts, landingFacts, oddsFacts } from "./rule-facts.js";
import { cutAllowed, pluggedPlan, settingsOf, withoutCut } from "./settings.js";
import { stabilityOf } from "./stability.js";
import { unopenedPlaces } from "./unopened.js";
import { warningsOf } from "./warnings.js";

/**
 * From a plan's inputs to the delay to cut, with its odds and its cut.
 *
 * The main road: settings that can be made, the nominal flight, every draw flown once and every setting judged on it, the
 * delay to cut, what the cut at home may be, what an over-cut element needs, what drives the spread, how it is packed and
 * where it lands, and the checks. What follows from the opening is of the setting that is to be flown: the flyer's own choice
 * where it can be made, else the delay to cut; what drives the spread and the cut at home are of the delay to cut.
 *
 * @param inputs without issues, those of `packingIssues` too
 * @param options draws ≥ 1, any integer seed
 * @throws what the runner or the pause rejects with
 * @example
 * const { toCut } = await decide(inputs, { seed: 1 });
 * await decide(inputs, { draws: 10_000, stages: [256, 2048], onPart: ({ draws, toCut }) => show(draws, toCut) });
 */
export async function decide(inputs: DecisionInputs, options: DecideOptions = {}): Promise<Decision> {
  const { seed, model } = { ...defaultDecideOptions, ...options };
  const draws = options.draws ?? defaultDrawsOf(model);
  const { stages = [], onPart, otherRockets = [] } = options;
  const run: OddsOptions = { draws, seed, flight: { model }, run: options.run ?? runHere };
  const told = { seed, model };
  const plans = settingsOf(inputs);
  const placesAt = openedPlacesOnce(inputs, { seed, pause: options.pause });
  let otherWeather: Promise<number> | undefined;
  const lookAtOtherWeather = (soFar: Picked): void => {
    if (otherWeather !== undefined || !cutsAtHome(inputs, soFar)) return;
    otherWeather = longestOfWeather(inputs, plans, soFar.judged.rough, run);
    // whoever calls it off hears of it below, once the draws have ended too
    otherWeather.catch(() => undefined);
  };
  const judged = await judgeSettings(inputs, plans.length > 0 ? plans : [pluggedPlan], {
    ...run,
    ...(options.memory === undefined ? {} : { memory: options.memory }),
    stages,
    onStage: (part) => {
      const soFar = pickFrom(inputs, plans, part);
      const heard = onPart?.(decisionOf(inputs, soFar, nothingFurther, told));
      lookAtOtherWeather(soFar);
      // while the other draws are flown on workers
      return Promise.resolve(heard).then(() => soFar.flown && placesAt(soFar.flown, part));
    },
  });
  const picked = pickFrom(inputs, plans, judged);
  lookAtOtherWeather(picked);
  // while other weather is flown on workers
  const explained = explainedBy(inputs, picked, seed);
  const landed = await openedLandings(inputs, picked, placesAt);
  const homeCut = await homeCutFor(inputs, plans, picked, otherWeather);
  const overCut = await overCutFor(inputs, picked, otherRockets, run);
  return decisionOf(inputs, picked, { homeCut, overCut, explained, landed }, told);
}

/** The settings as judged, and which is best. */
interface Picked {
  readonly judged: JudgedSettings;
  /** None for a motor without delay. */
  readonly settings: readonly Setting[];
  readonly best: Chosen | null;
  readonly setting: Setting | null;
  /** The best setting has to be cut. */
  readonly cuts: boolean;
  readonly choice: Decision["choice"];
  /** The setting that is to be flown: the choice, else the best. */
  readonly flown: Setting | null;
}

/** What is looked for once the best setting is known. */
interface Further {
  readonly homeCut: CutPlan | null;
  readonly overCut: OverCut | null;
  readonly explained: Drivers;
  /** Where opened draws come down. */
  readonly landed: Landed | null;
}

/** What the answer repeats of the options. */
type Told = Pick<Decision, "seed" | "model">;

const nothingFurther: Further = {
  homeCut: null,
  overCut: null,
  explained: { drivers: [], delayShareOfOdds: null },
  landed: null,
};

function pickFrom(inputs: DecisionInputs, plans: readonly CutPlan[], judged: JudgedSettings): Picked {
  const allowed = cutAllowed(inputs);
  const settings = plans.length > 0 ? judged.settings.map((s, i) => (allowed || i === 0 ? s : withoutCut(s))) : [];
  const best = settings.length > 0 ? choose(settings, inputs.limits) : null;
  const setting = best === null ? null : settings[best.index]!;
  const choice = choiceOf(inputs, settings);
  const cuts = setting !== null && cutsMore(setting, settings);
  return { judged, settings, best, setting, cuts, choice, flown: choice?.setting ?? setting };
}

/** Is more to be taken out than is now? */
function cutsMore({ removed }: Setting, settings: readonly Setting[]): boolean {
  return removed > (settings[0]?.removed ?? 0);
}

/** Is there a cut that may be begun at home? */
function cutsAtHome(inputs: DecisionInputs, { best, cuts }: Picked): boolean {
  return best !== null && cuts && cutAllowed(inputs) && inputs.cutSoFar === undefined;
}

async function homeCutFor(
  inputs: DecisionInputs,
  plans: readonly CutPlan[],
  picked: Picked,
  otherWeather: Promise<number> | undefined,
): Promise<CutPlan | null> {
  if (picked.best === null || otherWeather === undefined || !cutsAtHome(inputs, picked)) return null;
  return homeCutOf(plans, picked.best.index, await otherWeather);
}

async function overCutFor(
  inputs: DecisionInputs,
  { settings }: Picked,
  others: readonly OtherRocket[],
  run: OddsOptions,
): Promise<OverCut | null> {
  const asItIs = settings[0];
  if (inputs.cutSoFar === undefined || inputs.cutSoFar.removedDepth <= 0 || asItIs === undefined) return null;
  const good = (s: Setting): boolean => reachesLeast(s, inputs.limits) && s.odds.holds >= inputs.limits.leastHolds;
  if (good(asItIs) || asItIs.odds.earlyFast <= asItIs.odds.lateFast) return null;
  return overCutAdvice(inputs, asItIs, settings.slice(1).some(good), others, run);
}

async function openedLandings(
  inputs: DecisionInputs,
  { judged, flown }: Picked,
  placesAt: ReturnType<typeof openedPlacesOnce>,
): Promise<Landed | null> {
  if (flown === null) return null;
  const landed = landedOf(await placesAt(flown, judged), inputs.fieldLimits);
  return landed.draws + landed.notFollowed === 0 ? null : landed;
}

function explainedBy(inputs: DecisionInputs, { judged, best }: Picked, seed: number): Drivers {
  return driversOf(
    judged.chunk,
    inputs.spread,
    seed,
    best?.index ?? 0,
    best === null ? noScatter : judged.scatters[best.index]!,
    inputs.motor.delay.kind === "none" ? "burnout" : inputs.motor.delay.clock,
  );
}

/** The whole answer: after the first draws with nothing further, after all of them with everything. */
function decisionOf(inputs: DecisionInputs, picked: Picked, further: Further, { seed, model }: Told): Decision {
  const { judged, settings, best, setting, choice, flown } = picked;
  const { flight, chunk, strength } = judged;
  const { homeCut, overCut, explained, landed } = further;
  const toCut = best === null ? null : toCutOf(inputs, settings, best, homeCut);
  const stability = stabilityOf(flight);
  const figures = flightFigures(flight, chunk);
  const opened = openedAt(inputs, flight, flown);
  const unopened = landedOf(unopenedPlaces(chunk), inputs.fieldLimits);
  const packing = packingBy(inputs, flight.model, opened, flown, { opened: landed, unopened });
  const facts = {
    ...flightFacts(inputs, flight, stability, figures.apogeeHeight.p95),
    ...cuttingFacts(inputs, flown !== null && cutsMore(flown, settings) ? flown.removed : null),
    ...oddsFacts(inputs, {
      settings,
      setting,
      flown,
      goodEnough: toCut?.reachesLeast === true && toCut.reachesHolds,
      choice,
      overCut,
      opened,
      topAt: flight.events.apogee?.time,
      strengthRated: strength.rated,
      drawsNotFlown: judged.notFlown,
      coast: figures.coast.p50,
    }),
    ...landingFacts(inputs, packing, (flown?.odds.grounded ?? 1) < 1),
  };
  return {
    flight,
    ...figures,
    settings,
    toCut,
    choice,
    opened,
    overCut,
    unopened: {
      odds: flown?.odds.grounded ?? 1,
      east: flight.events.landing?.position[0] ?? 0,
      north: flight.events.landing?.position[1] ?? 0,
      ellipse95: unopened.p95,
    },
    stability,
    ...explained,
    strength,
    packing,
    checks: checksOf(facts, inputs.ruleSet),
    warnings: warningsOf(inputs, flight, stability, landed?.notFollowed ?? 0),
    seed,
    draws: judged.draws,
    model,
  };
}

function toCutOf(inputs: DecisionInputs, settings: readonly Setting[], best: Chosen, homeCut: CutPlan | null): ToCut {
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
