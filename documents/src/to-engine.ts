import {
  type DecisionInputs,
  normalGravity,
  type Rocket,
  type StatedPacking,
  standardAirAt,
  withLearned,
  withoutLearned,
} from "@delaywright/engine";
import type { Issue } from "./issue.js";
import { fieldLimits, placeOf } from "./kinds/field/to-engine.js";
import { chargeToEngine, motorToEngine } from "./kinds/motor/to-engine.js";
import { cutSoFar } from "./kinds/motor-in-hand/to-engine.js";
import { learnedFor, learnedNames } from "./kinds/plan/learned-to-engine.js";
import {
  airToEngine,
  limitsToEngine,
  spreadToEngine,
  weatherRangeToEngine,
  windToEngine,
} from "./kinds/plan/to-engine.js";
import { guideTravel } from "./kinds/rocket/guide-travel.js";
import { packingToEngine, recoveryToEngine, rocketToEngine } from "./kinds/rocket/to-engine.js";
import { ruleSetToEngine } from "./kinds/rule-set/to-engine.js";
import { given, si, siOr } from "./kinds/si.js";
import { toolToEngine } from "./kinds/tool/to-engine.js";
import type { PlanParts } from "./load-plan.js";
import { placeOfIssue, planConflicts } from "./plan-conflicts.js";
import { type Doubt, planDoubts } from "./plausible.js";
import { statedFacts } from "./stated-facts.js";

/** What stands beside the figures on every page: names and words, as they were typed. */
export interface PlanContext {
  readonly plan: string;
  readonly rocket: string;
  readonly motor: string;
  readonly tool?: string;
  readonly field?: string;
  readonly flyer?: string;
  /** A club's rule set. */
  readonly ruleSet?: string;
  readonly designation?: string;
  readonly maker?: string;
  /** Of the motor in hand. */
  readonly motorInHand?: string;
  readonly label?: string;
  readonly lot?: string;
  readonly date?: string;
  /** When the weather was read. */
  readonly weatherTaken?: string;
  /** A wind was given, near the ground or aloft. */
  readonly windGiven: boolean;
}

export type ToEngine =
  | {
      readonly ok: true;
      readonly inputs: DecisionInputs;
      readonly context: PlanContext;
      readonly warnings: readonly Doubt[];
    }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/**
 * Turns a plan and its documents into the engine's inputs, in SI units, with a default for all that was left out.
 *
 * What no flight can be computed from is an issue; what is only unlikely is a warning.
 *
 * @param parts of a plan that was loaded without issues
 * @example
 * const { parts } = await loadPlan("plan.json", files);
 * const made = parts && planToEngine(parts);
 */
export function planToEngine(parts: PlanParts): ToEngine {
  const before = planConflicts(parts);
  if (before.length > 0) return { ok: false, issues: before };
  const inputs = inputsOf(parts);
  if ("file" in inputs) return { ok: false, issues: [inputs] };
  // labels and conflicts are the documents' own, whatever flights taught
  const own = withoutLearned(inputs);
  const issues = planConflicts(parts, own);
  if (issues.length > 0) return { ok: false, issues };
  return { ok: true, inputs, context: contextOf(parts), warnings: planDoubts(parts, own) };
}

/** The documents in SI units, whatever they say against each other; an issue where that cannot be told. */
export function inputsOf(parts: PlanParts): DecisionInputs | Issue {
  const plan = parts.plan.document;
  const { weather, ballast, choice } = plan;
  const place = placeOf(parts.field?.document);
  const gravity = normalGravity(place.latitude, place.elevation);
  const rocket = rocketToEngine(parts.rocket.document, { readyWith: parts.readyWith?.document, gravity });
  const travel = travelOf(parts, rocket);
  if (typeof travel !== "number") return travel;
  const air = airToEngine(weather, place);
  const today = {
    wind: siOr(weather?.wind, "speed", 0),
    temperature: air.temperature ?? standardAirAt(place.elevation).temperature,
  };
  const inputs: DecisionInputs = {
    air,
    wind: windToEngine(weather),
    rocket,
    motor: motorToEngine(parts.motor),
    ballast: { mass: siOr(ballast?.mass, "mass", 0), at: siOr(ballast?.at, "length", 0) },
    guide: { travel, tilt: siOr(plan.guide.tilt, "angle", 0), toward: siOr(plan.guide.toward, "angle", 0) },
    recovery: recoveryToEngine(parts.rocket.document),
    ...given("tool", parts.tool && toolToEngine(parts.tool.document)),
    ...given("cutSoFar", parts.motorInHand && cutSoFar(parts.motorInHand.document)),
    limits: limitsToEngine(plan.limits),
    spread: spreadToEngine(plan.spread, rocket.inertiaSource),
    fieldLimits: fieldLimits(parts.field?.document),
    ...given("motorTemperature", siOr(weather?.motorTemperature, "temperature", undefined)),
    ...given("choice", choice && { delay: si(choice.delay, "time"), ...given("reason", choice.reason) }),
    ...given("weatherRange", weatherRangeToEngine(plan.weatherRange, today)),
    stated: statedFacts(parts),
    ruleSet: ruleSetOf(parts),
    packing: packingOf(parts),
  };
  const learned = plan.learned && learnedFor(plan.learned, learnedNames(parts), inputs.spread);
  return learned === undefined ? inputs : withLearned(inputs, learned);
}

function ruleSetOf({ plan, ruleSet }: PlanParts): NonNullable<DecisionInputs["ruleSet"]> {
  if (ruleSet !== undefined) return ruleSetToEngine(ruleSet.document);
  return plan.document.ruleSet === "none" ? "none" : "association";
}

function packingOf({ plan, rocket, motor }: PlanParts): StatedPacking {
  const { charge, landingSpeed, energyLimit, separationMargin } = plan.document.packing ?? {};
  return {
    ...packingToEngine(rocket.document),
    ...given("motorCharge", chargeToEngine(motor.document, siOr(charge, "mass", undefined))),
    options: {
      ...given("landingSpeed", siOr(landingSpeed, "speed", undefined)),
      ...given("energyLimit", siOr(energyLimit, "energy", undefined)),
      ...given("separationMargin", separationMargin),
    },
  };
}

function travelOf({ plan }: PlanParts, rocket: Rocket): number | Issue {
  const { travel, rail, stop } = plan.document.guide;
  if (travel !== undefined) return si(travel, "length");
  const free = guideTravel(rocket, siOr(rail, "length", 0), siOr(stop, "length", 0));
  if (free !== undefined && free > 0) return free;
  const accepted =
    free === undefined
      ? "the travel until the rocket is free, since the rocket names no fittings"
      : "a rail on which the forward fitting can travel; it starts beyond the rail's end";
  const code = free === undefined ? "no-fitting" : "fitting-beyond-rail";
  return placeOfIssue(
    plan,
    free === undefined ? "guide.travel" : "guide.rail",
    code,
    rail,
    accepted,
    '"travel": "1.8 m"',
  );
}

/** Names and words of a plan, as they were typed. */
export function contextOf({ plan, rocket, motor, motorInHand, tool, field, flyer, ruleSet }: PlanParts): PlanContext {
  const { weather } = plan.document;
  return {
    plan: plan.document.name,
    rocket: rocket.document.name,
    motor: motor.document.name,
    ...given("tool", tool?.document.name),
    ...given("field", field?.document.name),
    ...given("flyer", flyer?.document.name),
    ...given("ruleSet", ruleSet?.document.name),
    ...given("designation", motor.document.designation),
    ...given("maker", motor.document.maker),
    ...given("motorInHand", motorInHand?.document.name),
    ...given("label", motorInHand?.document.label),
    ...given("lot", motorInHand?.document.lot),
    ...given("date", plan.document.date),
    ...given("weatherTaken", weather?.taken),
    windGiven: weather?.wind !== undefined || weather?.aloft !== undefined,
  };
}
