import type { FlightInputs } from "../flight/inputs.js";
import type { AppliedLearning } from "../learning/applied-learning.js";
import type { GroundPoint, Zone } from "../packing/landing-zone.js";
import type { PackingInputs, PackingOptions } from "../packing/packing-inputs.js";
import type { RuleSet } from "../rules/check-rules.js";
import type { Spread } from "../spread/spread.js";
import type { StatedFacts } from "./stated-facts.js";

/** An amount that a tool takes off: seconds of its own grain, or a depth [m]. */
export type Removal = { readonly seconds: number } | { readonly depth: number };

/** A cutting tool: ends and spacers with fixed stops, or a hand-turned bit with a depth stop. */
export type CuttingTool =
  | {
      readonly kind: "ends";
      readonly name: string;
      readonly ends: readonly { readonly name: string; readonly removes: Removal }[];
      readonly spacers: readonly { readonly name: string; readonly keepsBack: Removal; readonly count: number }[];
      /** Depth of grain for one second of delay [m]. */
      readonly depthPerSecond: number;
      /** One sigma of the depth that a cut really gets [m]. */
      readonly depthError: number;
    }
  | {
      readonly kind: "stop";
      readonly name: string;
      readonly from: number;
      readonly to: number;
      readonly step: number;
      /** Depth for one second [m]; left out: the motor's. */
      readonly depthPerSecond?: number;
      readonly depthError: number;
    };

/** What has already been taken out of the motor in hand. */
export interface CutSoFar {
  /** Depth removed [m], ≥ 0. */
  readonly removedDepth: number;
  /** One sigma of that depth [m]. */
  readonly depthError: number;
}

export interface Limits {
  /** Highest airspeed of a clean opening [m/s]. */
  readonly openingSpeed: number;
  /** Least height of a clean opening [m]. */
  readonly openingHeight: number;
  /** Least odds of a clean opening, 0…1: below it, look. */
  readonly leastClean: number;
  /** Least odds that the recovery holds, 0…1: below it, stop. */
  readonly leastHolds: number;
}

/** The field's bounds that the decision looks at. */
export interface FieldLimits {
  /** Ceiling above the pad [m]. */
  readonly ceiling?: number;
  /** Azimuths between which the guide may lean, clockwise [rad]. */
  readonly tiltSector?: { readonly from: number; readonly to: number };
  /** Its edge, east and north of the pad [m]. */
  readonly boundary?: Zone;
  /** Where nothing may come down; empty: nowhere; left out: not known. */
  readonly keepOff?: readonly Zone[];
  /** Lines along which people stand, by their points. */
  readonly people?: readonly (readonly GroundPoint[])[];
}

/** What is packed, as far as it is stated; what is left out is not known. */
export interface StatedPacking
  extends Pick<
    PackingInputs,
    "bay" | "motorCharge" | "electronicsBay" | "fittingsStrength" | "stillShut" | "spillHole" | "sections"
  > {
  readonly options?: PackingOptions;
}

/** A range of weather at the field that a cut at home must leave room for. */
export interface WeatherRange {
  /** Wind at the reference height, least and most [m/s]. */
  readonly wind: readonly [number, number];
  /** Air temperature, least and most [K]. */
  readonly temperature: readonly [number, number];
}

/** Everything that the delay to cut depends on. */
export interface DecisionInputs extends FlightInputs {
  readonly tool?: CuttingTool;
  readonly cutSoFar?: CutSoFar;
  readonly limits: Limits;
  readonly spread: Spread;
  readonly fieldLimits: FieldLimits;
  /** Temperature of the soaked motor [K]; left out: the air's. */
  readonly motorTemperature?: number;
  /** The flyer's own setting [s]. */
  readonly choice?: { readonly delay: number; readonly reason?: string };
  readonly weatherRange?: WeatherRange;
  /** What is known of flyer, motor, field and day beside what the flight is reckoned from. */
  readonly stated?: StatedFacts;
  /** Left out: `association`. */
  readonly ruleSet?: RuleSet;
  readonly packing?: StatedPacking;
  /** What flights taught, already in drag, thrust and spread: see `withLearned`. */
  readonly learned?: AppliedLearning;
}
