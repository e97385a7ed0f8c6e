import { fly } from "../flight/fly.js";
import { ofMotorAlone, withLearned, withoutLearned } from "../learning/with-learned.js";
import type { Recovery } from "../packing/recovery.js";
import type { Rocket } from "../rocket/rocket.js";
import type { RuleFacts } from "../rules/facts.js";
import { checksOf } from "./checks.js";
import type { CutPlan } from "./cut-plan.js";
import type { BallastRange, Check, CheckCode, OverCut, Setting, SuitedRocket } from "./decision.js";
import { flightFigures } from "./flight-figures.js";
import type { DecisionInputs } from "./inputs.js";
import { landedOf } from "./landed.js";
import { type JudgedSettings, judgeSettings, type OddsOptions, roughFlight } from "./odds.js";
import { openedAt } from "./opened-at.js";
import { openedPlaces } from "./opened-places.js";
import { packingBy } from "./packing-of-decision.js";
import { flightFacts, landingFacts } from "./rule-facts.js";
import { stabilityOf } from "./stability.js";
import { unopenedPlaces } from "./unopened.js";

/** Another rocket of the library. */
export interface OtherRocket {
  readonly name: string;
  readonly rocket: Rocket;
  readonly recovery: Recovery;
}

/** Draws behind each odds of a search. */
const searchDraws = 256;

/** Masses tried between none and the most. */
const triedMasses = 14;

/** Most ballast tried, as a share of the lift-off mass: more is another rocket. Own default, no source. */
const mostBallastShare = 0.5;

/** Halvings of each edge of a range: some grams. */
const edgeHalvings = 5;

interface Point {
  readonly mass: number;
  readonly clean: number;
  readonly holds: number;
  /** At or above 0 where both odds reach their least. */
  readonly spare: number;
}

async function pointAt(inputs: DecisionInputs, plan: CutPlan, mass: number, options: OddsOptions): Promise<Point> {
  const { limits } = inputs;
  const there = { ...inputs, ballast: { ...inputs.ballast, mass } };
  const near = roughFlight(there, options.flight);
  const judged = await judgeSettings(there, [plan], { ...options, near, draws: Math.min(searchDraws, options.draws) });
  const { clean, holds } = judged.settings[0]!.odds;
  return { mass, clean, holds, spare: Math.min(clean - limits.leastClean, holds - limits.leastHolds) };
}

/** Where the ballast goes if the plan does not say: behind the nose. */
function ballastPlace(inputs: DecisionInputs): number {
  return inputs.ballast.at > 0 ? inputs.ballast.at : inputs.rocket.nose.length;
}

/**
 * Every range of ballast that brings the odds of a shortened element back.
 *
 * The coast over mass rises and falls, so the whole range of masses is walked and every edge halved, not one root sought.
 */
async function ballastRanges(inputs: DecisionInputs, plan: CutPlan, options: OddsOptions): Promise<BallastRange[]> {
  const at = ballastPlace(inputs);
  const placed: DecisionInputs = { ...inputs, ballast: { ...inputs.ballast, at } };
  const liftOff = inputs.rocket.mass + inputs.motor.loadedMass;
  const least = inputs.ballast.mass;
  const most = least + mostBallastShare * liftOff;
  const points: Point[] = [];
  for (let i = 1; i <= triedMasses; i++)
    points.push(await pointAt(placed, plan, least + ((most - least) * i) / triedMasses, options));
  const start = await pointAt(placed, plan, least, options);
  const all = [start, ...points];
  const edge = async (bad: Point, good: Point): Promise<Point> => {
    let [outside, inside] = [bad, good];
    for (let i = 0; i < edgeHalvings; i++) {
      const middle = await pointAt(placed, plan, 0.5 * (outside.mass + inside.mass), options);
      if (middle.spare >= 0) inside = middle;
      else outside = middle;
    }
    return inside;
  };
  const ranges: BallastRange[] = [];
  for (let i = 0; i < all.length; i++) {
    if (all[i]!.spare < 0) continue;
    let last = i;
    while (last + 1 < all.length && all[last + 1]!.spare >= 0) last += 1;
    const from = i === 0 ? all[0]! : await edge(all[i - 1]!, all[i]!);
    const to = last === all.length - 1 ? all[last]! : await edge(all[last + 1]!, all[last]!);
    // every mass in the range reaches both least odds: the best is the one that opens clean most often
    const best = [from, ...all.slice(i, last + 1), to].reduce((a, b) => (b.clean > a.clean ? b : a));
    ranges.push({
      from: from.mass,
      to: to.mass,
      untriedBeyond: last === all.length - 1,
      at,
      best: { mass: best.mass, clean: best.clean, holds: best.holds },
      checks: await checksWith(placed, plan, best.mass, options),
    });
    i = last;
  }
  return ranges;
}

async function checksWith(
  inputs: DecisionInputs,
  plan: CutPlan,
  mass: number,
  options: OddsOptions,
): Promise<BallastRange["checks"]> {
  const there = { ...inputs, ballast: { ...inputs.ballast, mass } };
  const judged = await judgeSettings(there, [plan], { ...options, draws: Math.min(searchDraws, options.draws) });
  return rocketChecks(there, judged, options);
}

/** Rules about the rocket on this motor and about where and how hard it lands, as against those about day and flyer. */
const ofRocket: readonly CheckCode[] = [
  "thrust-to-weight",
  "lift-off-weight",
  "guide-exit-speed",
  "guide-exit-against-wind",
  "cp-ahead-of-balance",
  "margin-at-guide-exit",
  "margin-at-burnout",
  "margin-in-flight",
  "over-stable",
  "ceiling",
  "landing-energy",
  "landing-speed",
  "landing-inside",
  "keep-off-zones",
  "landing-inside-unopened",
  "keep-off-zones-unopened",
];

async function rocketChecks(inputs: DecisionInputs, judged: JudgedSettings, options: OddsOptions): Promise<Check[]> {
  const { flight, chunk } = judged;
  const { apogeeHeight } = flightFigures(flight, chunk);
  const facts = {
    ...flightFacts(inputs, flight, stabilityOf(flight), apogeeHeight.p95),
    ...(await landingsWith(inputs, judged, options)),
  };
  return checksOf(facts, inputs.ruleSet).filter(({ code }) => ofRocket.includes(code));
}

/** Where and how hard it lands, as `decide` would find it. */
async function landingsWith(inputs: DecisionInputs, judged: JudgedSettings, { seed }: OddsOptions): Promise<RuleFacts> {
  const { flight, chunk } = judged;
  const setting = judged.settings[0]!;
  const opens = setting.odds.grounded < 1;
  const opened = opens ? landedOf(await openedPlaces(inputs, setting, judged, { seed }), inputs.fieldLimits) : null;
  const unopened = landedOf(unopenedPlaces(chunk), inputs.fieldLimits);
  const nominal = openedAt(inputs, flight, setting);
  return landingFacts(inputs, packingBy(inputs, flight.model, nominal, setting, { opened, unopened }), opens);
}

/** The plan's motor in another rocket: what was learned of the motor type goes with it. */
function inOtherRocket(inputs: DecisionInputs, rocket: Rocket): DecisionInputs {
  const { learned } = inputs;
  if (learned === undefined) return { ...inputs, rocket };
  const there = { ...withoutLearned(inputs), rocket };
  return withLearned(there, ofMotorAlone(learned, there.spread));
}

async function suitedRockets(
  inputs: DecisionInputs,
  plan: CutPlan,
  rockets: readonly OtherRocket[],
  options: OddsOptions,
): Promise<SuitedRocket[]> {
  const suited: SuitedRocket[] = [];
  for (const { name, rocket, recovery } of rockets) {
    if (rocket.mount.diameter < inputs.motor.diameter - 5e-4) continue;
    if (rocket.mount.diameter > inputs.motor.diameter + 2e-3) continue;
    const there: DecisionInputs = { ...inOtherRocket(inputs, rocket), recovery, ballast: { mass: 0, at: 0 } };
    if (fly(there, { ...options.flight, tolerance: 1e-6 }).ended !== "landed") continue;
    const judged = await judgeSettings(there, [plan], { ...options, draws: Math.min(searchDraws, options.draws) });
    const { clean, holds } = judged.settings[0]!.odds;
    if (clean < inputs.limits.leastClean || holds < inputs.limits.leastHolds) continue;
    const checks = await rocketChecks(there, judged, options);
    suited.push({ name, clean, holds, stops: checks.some((check) => check.verdict === "stop") });
  }
  return suited;
}

/**
 * What to do with an element that is cut and not good enough: every ballast that brings it back, rockets that it suits, or
 * "do not fly it".
 *
 * @param asItIs the element as it now is, judged
 * @param deeperIsGood a deeper cut would be good enough
 */
export async function overCutAdvice(
  inputs: DecisionInputs,
  asItIs: Setting,
  deeperIsGood: boolean,
  rockets: readonly OtherRocket[],
  options: OddsOptions,
): Promise<OverCut> {
  const ballast = await ballastRanges(inputs, asItIs, options);
  const suited = await suitedRockets(inputs, asItIs, rockets, options);
  const usable = ballast.some((range) => range.checks.every((check) => check.verdict !== "stop"));
  return {
    delay: asItIs.delay,
    delaySd: asItIs.delaySd,
    clean: asItIs.odds.clean,
    holds: asItIs.odds.holds,
    ballast,
    rockets: suited,
    doNotFly: !deeperIsGood && !usable && !suited.some((rocket) => !rocket.stops),
  };
}
