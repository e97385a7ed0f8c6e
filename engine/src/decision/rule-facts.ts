import type { FlightResult } from "../flight/result.js";
import { speedOf } from "../flight/trajectory.js";
import { burnOf } from "../motor/burn.js";
import { delayOfDepth } from "../motor/delay.js";
import { parseDesignation } from "../motor/designation.js";
import { isHighPowerRocket } from "../motor/high-power.js";
import { motorClass } from "../motor/motor-class.js";
import type { MotorCharge } from "../packing/motor-charge.js";
import { smallestWidth } from "../packing/zone-width.js";
import type { RuleFacts } from "../rules/facts.js";
import type { Decision, Setting, Stability } from "./decision.js";
import { distanceToEdge, distanceToLines } from "./ground-distance.js";
import type { CutSoFar, DecisionInputs } from "./inputs.js";
import type { Landed, Landings, Packing } from "./landed.js";
import { depthPerSecondOf } from "./removals.js";
import { validityOf } from "./warnings.js";
import { windNearGround } from "./wind-near-ground.js";

/** Facts with those left out that are not known. */
function known(facts: { readonly [Name in keyof RuleFacts]: RuleFacts[Name] | undefined }): RuleFacts {
  return Object.fromEntries(Object.entries(facts).filter(([, fact]) => fact !== undefined)) as RuleFacts;
}

const bothEnds = (calibres: number) => ({ least: calibres, most: calibres });

/**
 * Facts of rocket, motor, guide, field and day: what is known before any setting is judged.
 *
 * @param top height that 95 % of the draws stay below [m]
 */
export function flightFacts(
  inputs: DecisionInputs,
  flight: FlightResult,
  stability: Stability,
  top: number,
): RuleFacts {
  const { motor, guide, rocket, stated = {} } = inputs;
  const { windRead, ...statedFacts } = stated;
  const { model, events } = flight;
  const { burn } = model;
  // classes and distances are of the motor as it was certified, whatever flights taught of its impulse
  const certified = inputs.learned === undefined ? burn : burnOf(inputs.learned.before.motor.thrust);
  const liftOffMass = model.airframe.mass + motor.loadedMass;
  const certifiedAverageThrust =
    motor.designation === undefined ? undefined : parseDesignation(motor.designation)?.averageThrust;
  const { propellantMass } = motor;
  return known({
    ...statedFacts,
    ...siteFacts(inputs, top),
    highPower: isHighPowerRocket({
      liftOffMass,
      motor: {
        totalImpulse: certified.totalImpulse,
        averageThrust: certifiedAverageThrust ?? certified.averageThrust,
        propellantMass,
        sparking: stated.metalSponge === true,
      },
    }),
    complex: false,
    liftOffMass,
    retention: rocket.mount.retention,
    totalImpulse: certified.totalImpulse,
    propellantMass,
    certifiedAverageThrust,
    motorClass: motorClass(certified.totalImpulse),
    thrustToWeight: burn.averageThrust / (liftOffMass * model.gravityAt(0)),
    guideExitSpeed: events.guideExit === null ? 0 : speedOf(events.guideExit.velocity),
    marginAtGuideExit: bothEnds(stability.guideExit.calibres),
    marginAtBurnout: bothEnds(stability.burnout.calibres),
    marginInFlight: { least: stability.inFlight.least.calibres, most: stability.inFlight.most.calibres },
    height95: top,
    validity: validityOf(inputs, flight, stability),
    windSpeed: windRead === false ? undefined : windNearGround(inputs),
    tilt: guide.tilt,
    toward: guide.toward,
    ...chargeFacts(inputs),
  });
}

/** Distances and bounds of the field; a statement of the documents stands before a figure from its outline. */
function siteFacts({ fieldLimits, stated = {} }: DecisionInputs, top: number) {
  const { boundary, people } = fieldLimits;
  const ceiling = fieldLimits.ceiling ?? stated.ceiling;
  return {
    ceiling,
    highestAllowed: ceiling === null ? top : ceiling,
    tiltSector: fieldLimits.tiltSector ?? stated.tiltSector,
    siteSmallest: stated.siteSmallest ?? (boundary === undefined ? undefined : (smallestWidth(boundary) ?? undefined)),
    siteEdgeDistance: boundary === undefined ? undefined : distanceToEdge(boundary),
    peopleDistance: stated.peopleDistance ?? (people === undefined ? undefined : distanceToLines(people)),
  };
}

/** The motor's ejection charge. */
function chargeFacts({ motor, packing, recovery }: DecisionInputs) {
  const hasCharge = motor.delay.kind !== "none";
  const stated: MotorCharge = packing?.motorCharge ?? {};
  return {
    hasCharge,
    electronics: recovery.electronics !== undefined,
    charge: hasCharge ? stated.mass : null,
    wellHolds: hasCharge ? stated.wellHolds : null,
  };
}

/** Sigmas of a reading by which an element must be over a limit to be held for over it. Own default, no source. */
const readingSigmas = 2;

/**
 * Facts of cutting an element: of what is to be taken out, and of what has been taken out already. The maker's rules hold for
 * both, and what the motor's instructions allow is asked wherever a reading says that anything is gone.
 *
 * A reading strays. One that is over the most by no more than two sigma of it may be of an element that is just at it, and
 * counts as that; one that is over by more counts as it was read. Where no tool is at hand for an element that was cut before,
 * with which it was cut is not known.
 *
 * @param removed in all, once it is cut [s]; null: nothing more is to be cut
 */
export function cuttingFacts({ motor, tool, cutSoFar }: DecisionInputs, removed: number | null): RuleFacts {
  const { delay } = motor;
  const alreadyCut = cutSoFar !== undefined && cutSoFar.removedDepth > 0;
  if (delay.kind !== "adjustable" || (removed === null && !alreadyCut)) return { cuts: false };
  const most = Math.min(delay.mostRemoved, delay.leastLeft > 0 ? delay.longest - delay.leastLeft : delay.mostRemoved);
  return known({
    cuts: true,
    removed: removed ?? readRemoval(cutSoFar!, depthPerSecondOf(delay, tool), most),
    mostRemoved: Number.isFinite(most) ? most : null,
    instructionsConfirmed: delay.cuttingConfirmed,
    toolNamed: delay.toolNamed ?? null,
    tool: tool?.name ?? (removed === null ? undefined : null),
  });
}

/** What a reading says is gone, beyond its own error where that decides [s]; undefined where no depth per second is known. */
function readRemoval(
  { removedDepth, depthError }: CutSoFar,
  depthPerSecond: number | undefined,
  most: number,
): number | undefined {
  if (depthPerSecond === undefined) return undefined;
  const read = delayOfDepth(removedDepth, depthPerSecond);
  const atLeast = delayOfDepth(removedDepth - readingSigmas * depthError, depthPerSecond);
  return read > most && atLeast <= most ? most : read;
}

/** What was judged of the settings. */
export interface Judged {
  readonly settings: readonly Setting[];
  /** The delay to cut; null for a motor without delay. */
  readonly setting: Setting | null;
  /** The setting that is to be flown: the choice, else the delay to cut. */
  readonly flown: Setting | null;
  /** The best setting is good enough. */
  readonly goodEnough: boolean;
  readonly choice: Decision["choice"];
  readonly overCut: Decision["overCut"];
  readonly opened: Decision["opened"];
  /** Time of the nominal top [s]. */
  readonly topAt: number | undefined;
  readonly strengthRated: boolean;
  readonly drawsNotFlown: number;
  /** From burnout to the top, the middle of the draws [s]. */
  readonly coast: number;
}

/** Facts of the settings and their odds. */
export function oddsFacts(inputs: DecisionInputs, judged: Judged): RuleFacts {
  const { settings, setting, flown, choice, overCut, opened, topAt } = judged;
  const { limits } = inputs;
  const landing = opened?.landing?.time;
  return known({
    openingSpeed90: flown?.openingSpeed?.p90 ?? null,
    openingSpeedLimit: limits.openingSpeed,
    strengthRated: setting === null ? null : judged.strengthRated,
    bestHolds: setting === null ? null : Math.max(...settings.map((s) => s.odds.holds)),
    clean: setting === null || setting.firesFirst !== null ? null : setting.odds.clean,
    firesFirst: setting?.firesFirst ?? null,
    leastHolds: limits.leastHolds,
    leastClean: limits.leastClean,
    wantedDelay: wantedDelay(inputs, judged),
    reachableDelays:
      setting === null
        ? null
        : { least: Math.min(...settings.map((s) => s.delay)), most: Math.max(...settings.map((s) => s.delay)) },
    delayFixed: inputs.motor.delay.kind === "fixed",
    choice:
      inputs.choice === undefined
        ? null
        : { delay: inputs.choice.delay, odds: choice === null ? null : choice.setting.odds },
    overCut: overCut === null ? null : { delay: overCut.delay, doNotFly: overCut.doNotFly },
    drawsNotFlown: judged.drawsNotFlown,
    descentTime: opened === null ? null : landing === undefined || topAt === undefined ? undefined : landing - topAt,
  });
}

/**
 * The delay that opens at the top [s], asked for only where no setting is good enough: another one could then be. A back-up
 * charge is to fire later than that.
 */
function wantedDelay({ recovery }: DecisionInputs, judged: Judged): number | null {
  const { setting, goodEnough, coast } = judged;
  if (setting === null || goodEnough || setting.firesFirst !== null) return null;
  return Math.max(0, coast - recovery.lineStretch);
}

/**
 * Facts of where and how hard it lands.
 *
 * @param opens false: every flight comes down unopened
 */
export function landingFacts(inputs: DecisionInputs, packing: Packing, opens: boolean): RuleFacts {
  return known({
    ...placeFacts(inputs, packing.landings, opens),
    chargeFactor: chargeFactorOf(packing),
    landingEnergy: Math.max(...packing.landing.sections.map(({ energy }) => energy)),
    landingSpeed: packing.landing.speed,
  });
}

/**
 * Facts of where it lands.
 *
 * @param opens false: every flight comes down unopened
 */
export function placeFacts({ fieldLimits }: DecisionInputs, { opened, unopened }: Landings, opens: boolean): RuleFacts {
  const { boundary, keepOff } = fieldLimits;
  // a share that leaves out those that were lost says too little
  const followed = (side: Landed | null) => (side === null || side.notFollowed > 0 ? undefined : side);
  const outside = (side: Landed | null) => (boundary === undefined ? undefined : followed(side)?.outside);
  const within = (side: Landed | null) =>
    keepOff === undefined ? undefined : keepOff.length > 0 ? followed(side)?.keepOff : null;
  return known({
    outsideOpened: opens ? outside(opened) : null,
    keepOffOpened: opens ? within(opened) : null,
    outsideUnopened: outside(unopened) ?? undefined,
    keepOffUnopened: within(unopened),
  });
}

/** Push of the motor's charge over what holds the bay shut; null: no charge, or nothing holds it; undefined: not known. */
function chargeFactorOf({ bay }: Packing): number | null | undefined {
  if (bay === null) return undefined;
  if (bay.motorCharge === null || bay.separation?.holding === 0) return null;
  return bay.motorCharge.factor ?? undefined;
}
