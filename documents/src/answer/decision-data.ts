import type {
  CutPlan,
  Decision,
  DecisionInputs,
  Learned,
  MarginAt,
  Odds,
  Setting,
  ToCut,
  Unopened,
} from "@delaywright/engine";
import type { Doubt } from "../plausible.js";
import type { PlanContext } from "../to-engine.js";
import { type FactorData, factorData } from "./factor-data.js";
import { type DescentData, descentData, type FlightData, flightData } from "./flight-data.js";
import { type GivenData, givenData } from "./given-data.js";

/** A decision with all that it is told with. */
export interface Answer {
  readonly decision: Decision;
  readonly inputs: DecisionInputs;
  readonly context: PlanContext;
  readonly doubts: readonly Doubt[];
}

/** A delay and how the tool makes it: seconds and metres. */
export interface CutData {
  readonly delay: number;
  readonly removed: number;
  readonly end: string | null;
  readonly spacers: readonly string[];
  readonly depth: number | null;
}

/** Figures that are all null where every flight lands before it opens. */
type OrNull<Figures> = { readonly [Key in keyof Figures]: number | null };

/** One achievable setting with its odds. */
export interface SettingData extends CutData {
  readonly odds: Odds;
  readonly openingSpeed: OrNull<NonNullable<Setting["openingSpeed"]>>;
  readonly openingHeight: OrNull<NonNullable<Setting["openingHeight"]>>;
  readonly secondsFromApogee: OrNull<NonNullable<Setting["secondsFromApogee"]>>;
  readonly delaySd: number;
  readonly firesFirst: number | null;
}

/** The delay to cut. */
export interface ToCutData extends CutData, Pick<ToCut, "reachesLeast" | "reachesHolds" | "why" | "reasons" | "helps"> {
  readonly homeCut: CutData | null;
  readonly homeWeather: ToCut["homeWeather"];
}

/** The whole answer as plain data: SI units and codes. It survives a structured clone, and is what `decide --json` prints. */
export interface DecisionData
  extends Pick<
    Decision,
    | "apogeeHeight"
    | "apogeeAirspeed"
    | "overCut"
    | "drivers"
    | "delayShareOfOdds"
    | "strength"
    | "packing"
    | "checks"
    | "warnings"
    | "seed"
    | "draws"
    | "model"
  > {
  readonly context: PlanContext;
  readonly given: GivenData;
  /** From burnout to the top [s]; its density is a picture, not a figure. */
  readonly coast: Omit<Decision["coast"], "density">;
  readonly flight: FlightData;
  readonly settings: readonly SettingData[];
  readonly toCut: ToCutData | null;
  readonly choice: { readonly setting: SettingData; readonly reason: string | null } | null;
  readonly opened: DescentData | null;
  readonly unopened: Pick<Unopened, "odds" | "east" | "north" | "ellipse95">;
  readonly stability: {
    /** From the nose tip [m]. */
    readonly cp: number;
    /** Margins in calibres. */
    readonly atGuideExit: number;
    readonly atBurnout: number;
    readonly guideExit: MarginAt;
    readonly guideExitAtAngle: Decision["stability"]["guideExitAtAngle"];
    readonly burnout: MarginAt;
    /** The least and the most between guide exit and top, with time [s] and Mach number. */
    readonly inFlight: Decision["stability"]["inFlight"];
  };
  /** What flights taught, as far as it was reckoned with; null: nothing. */
  readonly learned: LearnedBasis | null;
  readonly limits: DecisionInputs["limits"];
  readonly doubts: readonly Doubt[];
}

/** What of the odds rests on past flights. */
export interface LearnedBasis {
  /** Factors on what the documents say. */
  readonly drag: FactorData;
  readonly impulse: FactorData;
  /** Delays of the motor type seen, and bounds; null: none. */
  readonly delays: { readonly seen: number; readonly bounds: number } | null;
  readonly flights: Learned["flights"];
}

/** Without the last digits that adding and dividing leave: nanoseconds and nanometres mean nothing here. */
function neat(value: number): number {
  return Math.round(value * 1e9) / 1e9;
}

/** A cut as plain data. */
export function cutData({ delay, removed, end, spacers, depth }: CutPlan): CutData {
  return { delay: neat(delay), removed: neat(removed), end, spacers, depth: depth === null ? null : neat(depth) };
}

function learnedBasis(learned: Learned | undefined): LearnedBasis | null {
  if (learned === undefined || learned.flights.rocket + learned.flights.motor === 0) return null;
  const { drag, impulse, delay, flights } = learned;
  return {
    drag: factorData(drag.mean, drag.sd),
    impulse: factorData(impulse.mean, impulse.sd),
    delays: delay === undefined ? null : { seen: delay.seen, bounds: delay.bounds },
    flights,
  };
}

const nothing = {
  openingSpeed: { p05: null, p50: null, p90: null, p95: null },
  openingHeight: { p05: null, p10: null, p50: null },
  secondsFromApogee: { p05: null, p50: null, p95: null },
};

/** A setting with its odds as plain data. */
export function settingData(setting: Setting): SettingData {
  return {
    ...cutData(setting),
    odds: setting.odds,
    openingSpeed: setting.openingSpeed ?? nothing.openingSpeed,
    openingHeight: setting.openingHeight ?? nothing.openingHeight,
    secondsFromApogee: setting.secondsFromApogee ?? nothing.secondsFromApogee,
    delaySd: setting.delaySd,
    firesFirst: setting.firesFirst,
  };
}

/**
 * A decision as plain data: SI units and codes, without functions, so that a worker can hand it over and a store can keep it.
 *
 * @param answer the decision with the inputs, names and doubts that it is told with
 * @returns what `decide --json` prints
 * @example
 * const made = planToEngine(parts);
 * decisionData({ ...made, decision: await decide(made.inputs), doubts: made.warnings }).toCut?.delay; // 9
 */
export function decisionData({ decision, inputs, context, doubts }: Answer): DecisionData {
  const { toCut, choice, overCut, stability, unopened } = decision;
  const { density: _, ...coast } = decision.coast;
  return {
    context,
    given: givenData(inputs),
    flight: flightData(decision.flight),
    coast,
    apogeeHeight: decision.apogeeHeight,
    apogeeAirspeed: decision.apogeeAirspeed,
    settings: decision.settings.map(settingData),
    toCut: toCut && {
      ...cutData(toCut),
      reachesLeast: toCut.reachesLeast,
      reachesHolds: toCut.reachesHolds,
      why: toCut.why,
      reasons: toCut.reasons,
      helps: toCut.helps,
      homeCut: toCut.homeCut && cutData(toCut.homeCut),
      homeWeather: toCut.homeWeather,
    },
    choice: choice && { setting: settingData(choice.setting), reason: choice.reason },
    opened: descentData(decision.opened),
    overCut,
    unopened: { odds: unopened.odds, east: unopened.east, north: unopened.north, ellipse95: unopened.ellipse95 },
    stability: {
      cp: stability.cp,
      atGuideExit: stability.guideExit.calibres,
      atBurnout: stability.burnout.calibres,
      guideExit: stability.guideExit,
      guideExitAtAngle: stability.guideExitAtAngle,
      burnout: stability.burnout,
      inFlight: stability.inFlight,
    },
    drivers: decision.drivers,
    delayShareOfOdds: decision.delayShareOfOdds,
    strength: decision.strength,
    learned: learnedBasis(inputs.learned),
    limits: inputs.limits,
    packing: decision.packing,
    checks: decision.checks,
    warnings: decision.warnings,
    doubts,
    seed: decision.seed,
    draws: decision.draws,
    model: decision.model,
  };
}
