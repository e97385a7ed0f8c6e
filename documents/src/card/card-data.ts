import { airframeWithBallast, burnOf, type DecisionInputs, loadedAt, normalGravity } from "@delaywright/engine";
import type { DecisionData, SettingData } from "../answer/decision-data.js";
import { cutSoFar } from "../kinds/motor-in-hand/to-engine.js";
import { siOr } from "../kinds/si.js";
import type { PlanParts } from "../load-plan.js";
import { planToEngine } from "../to-engine.js";

/** Delays closer than this are the same [s]. */
const SAME = 1e-6;

/** One delay of the card with its odds. */
export interface CardDelay {
  /** [s] */
  readonly delay: number;
  /** One sigma of it, from two depth readings [s]; null where it is a setting. */
  readonly sd: number | null;
  /** When it was read, as typed; null: it was not. */
  readonly when: string | null;
  /** The flyer's reason; null where there is none. */
  readonly reason: string | null;
  /** Its odds and openings; null where it cannot be made, or was cut beyond what was judged. */
  readonly setting: SettingData | null;
}

/** A canopy as the plan has it. */
interface CardCanopy {
  readonly shape: string;
  /** [m] */
  readonly diameter: number;
}

type Shared =
  | "context"
  | "given"
  | "coast"
  | "apogeeHeight"
  | "toCut"
  | "opened"
  | "unopened"
  | "overCut"
  | "limits"
  | "strength"
  | "learned"
  | "warnings"
  | "doubts"
  | "seed"
  | "draws"
  | "model";

/** What stands on a flight card: SI units, codes, and names as they were typed. Keys as in `DecisionData` mean the same. */
export interface CardData extends Pick<DecisionData, Shared> {
  /** When it was computed, in words, as the caller gave it. */
  readonly computed: string;
  /** Version of the program. */
  readonly version: string;
  readonly flyer: {
    readonly name: string;
    readonly certification: number | null;
    readonly association: string | null;
  } | null;
  readonly rocket: {
    readonly name: string;
    /** [m] */
    readonly diameter: number;
    /** [m] */
    readonly length: number;
    /** With motor and ballast, at lift-off [kg]. */
    readonly liftOffMass: number;
    /** Likewise, from the nose tip [m]. */
    readonly balanceReady: number;
    /** From the nose tip [m]. */
    readonly cp: number;
    /** Somebody stated the centre of pressure; else it is computed. */
    readonly cpStated: boolean;
    /** Calibres. */
    readonly marginAtGuideExit: number;
    readonly marginAtBurnout: number;
  };
  readonly motor: {
    readonly name: string;
    readonly designation: string | null;
    readonly maker: string | null;
    /** Name, label and lot of the motor in hand; null for a motor type. */
    readonly inHand: { readonly name: string; readonly label: string | null; readonly lot: string | null } | null;
    /** [N s] */
    readonly totalImpulse: number;
    /** [N] */
    readonly averageThrust: number;
    /** [s] */
    readonly burnTime: number;
    /** Average thrust over lift-off weight. */
    readonly thrustToWeight: number;
  };
  /** [m/s]; null: it never leaves the guide. */
  readonly guideExitSpeed: number | null;
  /** Of the flight as planned, above the pad [m]; null: there is no top. */
  readonly expectedHeight: number | null;
  /** Above the pad [m]; null: the field names none. */
  readonly ceiling: number | null;
  /** As read, as suggested, and the flyer's own; null where there is none. */
  readonly asCut: CardDelay | null;
  readonly suggested: CardDelay | null;
  readonly choice: CardDelay | null;
  readonly recovery: {
    readonly motorCharge: "primary" | "backup";
    /** Electronics fires after the top [s]; null: none. */
    readonly electronicsDelay: number | null;
    readonly drogue: CardCanopy | null;
    readonly main: CardCanopy;
    /** Height of the second event above the pad [m]; null: there is none. */
    readonly mainOpensAt: number | null;
  };
  /** Checks that do not pass, stop first, then look, then what was not checked. */
  readonly checks: DecisionData["checks"];
  /** How many pass. */
  readonly passed: number;
}

/** What a card is made of. */
export interface CardInputs {
  readonly data: DecisionData;
  /** The documents of the very plan that was decided. */
  readonly parts: PlanParts;
  /** When it was computed, in words. */
  readonly computed: string;
  /** Version of the program. */
  readonly version: string;
}

/**
 * What stands on the flight card of a plan, as plain data.
 *
 * @param inputs the decision, the plan's documents, the day and time, and the program's version
 * @throws {RangeError} where the documents are not those of a plan that can be decided
 * @example
 * cardData({ data, parts, computed: "2 May 2026, 11:05", version: "0.1.0" }).motor.thrustToWeight; // 6.65
 */
export function cardData({ data, parts, computed, version }: CardInputs): CardData {
  const made = planToEngine(parts);
  if (!made.ok) throw new RangeError("a plan that can be decided is accepted");
  const { inputs } = made;
  const { toCut, stability } = data;
  const verdicts = ["stop", "look"];
  const rank = (verdict: string): number => (verdicts.includes(verdict) ? verdicts.indexOf(verdict) : verdicts.length);
  const checks = data.checks.filter(({ verdict }) => verdict !== "pass");
  const rocket = rocketOf(parts, inputs);
  return {
    ...sharedOf(data),
    computed,
    version,
    flyer: flyerOf(parts),
    rocket: {
      ...rocket,
      cp: stability.cp,
      cpStated: inputs.rocket.statedCp !== undefined,
      marginAtGuideExit: stability.atGuideExit,
      marginAtBurnout: stability.atBurnout,
    },
    motor: motorOf(parts, inputs, rocket.liftOffMass),
    guideExitSpeed: data.flight.guideExit?.speed ?? null,
    expectedHeight: data.flight.apogee?.height ?? null,
    ceiling: inputs.fieldLimits.ceiling ?? null,
    asCut: asCutOf(parts, data),
    suggested: toCut && {
      delay: toCut.delay,
      sd: null,
      when: null,
      reason: null,
      setting: settingAt(data, toCut.delay),
    },
    choice: choiceOf(parts, data),
    recovery: recoveryOf(inputs),
    checks: [...checks].sort((a, b) => rank(a.verdict) - rank(b.verdict)),
    passed: data.checks.length - checks.length,
  };
}

function sharedOf(data: DecisionData): Pick<DecisionData, Shared> {
  const { context, given, coast, apogeeHeight, toCut, opened, unopened, overCut } = data;
  const { limits, strength, learned, warnings, doubts, seed, draws, model } = data;
  const flown = { context, given, coast, apogeeHeight, toCut, opened, unopened, overCut };
  return { ...flown, limits, strength, learned, warnings, doubts, seed, draws, model };
}

function flyerOf({ flyer }: PlanParts): CardData["flyer"] {
  if (flyer === undefined) return null;
  const { name, certification, association } = flyer.document;
  return { name, certification: certification ?? null, association: association ?? null };
}

function rocketOf({ rocket: { document } }: PlanParts, { rocket, ballast, motor }: DecisionInputs) {
  const { diameter, length, mount } = rocket;
  const place = { length: motor.length, diameter: motor.diameter, aftAt: mount.motorAftAt };
  const ready = loadedAt(airframeWithBallast(rocket, ballast), place, motor.loadedMass);
  return { name: document.name, diameter, length, liftOffMass: ready.mass, balanceReady: ready.balance };
}

function motorOf({ motor, motorInHand }: PlanParts, inputs: DecisionInputs, mass: number): CardData["motor"] {
  const { totalImpulse, averageThrust, burnTime } = burnOf(inputs.motor.thrust);
  const weight = mass * normalGravity(inputs.air.latitude, inputs.air.elevation);
  const { name, designation, maker } = motor.document;
  return {
    name,
    designation: designation ?? null,
    maker: maker ?? null,
    inHand: motorInHand === undefined ? null : handOf(motorInHand.document),
    totalImpulse,
    averageThrust,
    burnTime,
    thrustToWeight: averageThrust / weight,
  };
}

function handOf({ name, label, lot }: NonNullable<PlanParts["motorInHand"]>["document"]) {
  return { name, label: label ?? null, lot: lot ?? null };
}

function settingAt({ settings }: DecisionData, delay: number): SettingData | null {
  return settings.find((setting) => Math.abs(setting.delay - delay) < SAME) ?? null;
}

/** The delay that the last depth reading leaves. */
function asCutOf({ motor, motorInHand, tool }: PlanParts, data: DecisionData): CardDelay | null {
  const { delay } = motor.document;
  const cut = motorInHand && cutSoFar(motorInHand.document);
  if (cut === undefined || delay.kind !== "adjustable") return null;
  const grain = siOr(delay.depthPerSecond ?? tool?.document.depthPerSecond, "length", undefined);
  const longest = siOr(delay.longest, "time", undefined);
  if (grain === undefined || longest === undefined) return null;
  const last = motorInHand?.document.readings?.findLast((reading) => reading.after !== undefined);
  const left = longest - cut.removedDepth / grain;
  const sd = cut.depthError / grain;
  return { delay: left, sd, when: last?.when ?? null, reason: null, setting: settingAt(data, left) };
}

function choiceOf({ plan }: PlanParts, { choice }: DecisionData): CardDelay | null {
  const own = plan.document.choice;
  const delay = siOr(own?.delay, "time", undefined);
  if (delay === undefined) return null;
  return {
    delay: choice?.setting.delay ?? delay,
    sd: null,
    when: null,
    reason: own?.reason ?? null,
    setting: choice?.setting ?? null,
  };
}

function recoveryOf({ recovery }: DecisionInputs): CardData["recovery"] {
  const { motorCharge, electronics, drogue, main } = recovery;
  const canopyOf = ({ canopy }: typeof main): CardCanopy => ({ shape: canopy.shape, diameter: canopy.diameter });
  return {
    motorCharge,
    electronicsDelay: electronics?.delay ?? null,
    drogue: drogue === undefined ? null : canopyOf(drogue),
    main: canopyOf(main),
    mainOpensAt: main.opensAt ?? null,
  };
}
