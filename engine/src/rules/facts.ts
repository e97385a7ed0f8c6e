import type { ValidityWarning } from "../rocket/validity.js";

/** The least and the most of a figure over a flight, or over its draws. */
export interface Extremes {
  readonly least: number;
  readonly most: number;
}

/**
 * Everything that the rules look at, in SI.
 *
 * A fact that is left out is not known: rules that need it say `not-checked` and name it. A fact that is null is known to be
 * none (a field without a ceiling, no road near): rules about it do not apply. A number that is not finite counts as not known.
 */
export interface RuleFacts {
  /** The rocket is a high-power one: `isHighPowerRocket`. */
  readonly highPower?: boolean;
  /** More than one motor: multistaged or clustered. */
  readonly complex?: boolean;
  /** [kg] */
  readonly liftOffMass?: number;
  /** Highest lift-off mass by the motor's maker [kg]; null: the maker states none. */
  readonly makerMostLiftOffMass?: number | null;
  /** Paper, wood or breakable plastic without substantial metal parts, on slow-burning propellant. */
  readonly lightMaterials?: boolean;
  /** What keeps the motor in its tube. */
  readonly retention?: "positive" | "friction" | "none";

  /** Of all motors installed, in all [N s]. */
  readonly totalImpulse?: number;
  /** Of all motors installed [kg]. */
  readonly propellantMass?: number;
  /** As certified, of the motors lit at launch [N]. */
  readonly certifiedAverageThrust?: number;
  /** `1/8A` … `O`. */
  readonly motorClass?: string;
  /** A certified commercial motor. */
  readonly motorCertified?: boolean;
  /** The propellant holds titanium sponge or other metal that throws sparks. */
  readonly metalSponge?: boolean;
  /** Ejection charge that is to go into the motor's well [kg]; null: none. */
  readonly charge?: number | null;
  /** Push of the motor's charge over what holds the bay shut; null: no charge, or nothing holds it. */
  readonly chargeFactor?: number | null;
  /** The most that the well holds [kg]; null: the motor has no well. */
  readonly wellHolds?: number | null;

  /** Of the flyer, 0 … 3. */
  readonly certification?: number;
  /** Of the flyer [years]. */
  readonly age?: number;
  /** A person of at least 18 years is there, in charge of the launch, and has the last word on it. */
  readonly adultInCharge?: boolean;
  /** Means to report and to control a fire are at hand. */
  readonly fireMeans?: boolean;

  /** Average thrust over lift-off weight. */
  readonly thrustToWeight?: number;
  /** Ground speed as the rocket leaves the guide [m/s]; 0: it never does. */
  readonly guideExitSpeed?: number;
  /** Static margin as it leaves the guide [calibres]. */
  readonly marginAtGuideExit?: Extremes;
  /** Static margin at burnout [calibres]. */
  readonly marginAtBurnout?: Extremes;
  /** Static margin from guide exit to the top [calibres]. */
  readonly marginInFlight?: Extremes;
  /** Height of the top above the pad that 95 % of the draws stay below [m]. */
  readonly height95?: number;
  /** Where models were used outside their validated range: `validityWarnings`. */
  readonly validity?: readonly ValidityWarning[];
  /** Draws that never left the guide or never came down. */
  readonly drawsNotFlown?: number;

  /** Wind near the ground [m/s]. */
  readonly windSpeed?: number;
  /** Since the weather was read [s]. */
  readonly weatherAge?: number;
  /** Share of the sky, 0…1. */
  readonly cloudCover?: number;
  /** Lowest cloud above the pad [m]; null: no cloud. */
  readonly cloudBase?: number | null;
  /** [m] */
  readonly visibility?: number;
  /** The sun is up at the place and time of launch. */
  readonly daylight?: boolean;
  /** Local time of day [s after midnight]. */
  readonly timeOfDay?: number;
  /** When the field is open [s after midnight], over midnight where `from` is the later; null: always. */
  readonly fieldHours?: { readonly from: number; readonly to: number } | null;

  /** Lean of the guide from the vertical [rad]. */
  readonly tilt?: number;
  /** Azimuth to which it leans [rad]. */
  readonly toward?: number;
  /** Azimuths between which it may lean, clockwise [rad]; null: all. */
  readonly tiltSector?: { readonly from: number; readonly to: number } | null;

  /** Ceiling above the pad [m]; null: none. */
  readonly ceiling?: number | null;
  /** Highest altitude allowed at the field, above ground [m]: its ceiling; the flight's expected top where it has none. */
  readonly highestAllowed?: number;
  /** Smallest dimension of the launch site [m]. */
  readonly siteSmallest?: number;
  /** From the pad to the nearest edge of the launch site [m]. */
  readonly siteEdgeDistance?: number;
  /** From the pad to the nearest person [m]. */
  readonly peopleDistance?: number;
  /** To the nearest persons and property that have no part in the launch [m]; null: none near. */
  readonly uninvolvedDistance?: number | null;
  /** To the nearest occupied building [m]; null: none near. */
  readonly buildingDistance?: number | null;
  /** To the nearest public road with more than ten vehicles an hour [m]; null: none near. */
  readonly roadDistance?: number | null;
  /** To the boundary of the nearest airport [m]; null: none near. */
  readonly airportDistance?: number | null;
  /** Diameter of ground cleared of what burns, about the pad [m]. */
  readonly clearedDiameter?: number;
  /** The flight enters controlled airspace. */
  readonly controlledAirspace?: boolean;
  /** The aviation authority has authorised what the rule else forbids. */
  readonly authorised?: boolean;
  /** How long before the flight the nearest air traffic control facility was told [s]; null: not told. */
  readonly noticeBefore?: number | null;

  /** Share of the opened landings outside the field's boundary, 0…1; null: nothing opens. */
  readonly outsideOpened?: number | null;
  /** Share of the unopened landings outside the field's boundary, 0…1. */
  readonly outsideUnopened?: number;
  /** Share of the opened landings in zones where nothing may come down, 0…1; null: the field has none, or nothing opens. */
  readonly keepOffOpened?: number | null;
  /** Share of the unopened landings in such zones, 0…1; null: the field has none. */
  readonly keepOffUnopened?: number | null;
  /** Of the section that lands hardest [J]. */
  readonly landingEnergy?: number;
  /** At which it meets the ground under its canopies [m/s]. */
  readonly landingSpeed?: number;
  /** From the top to the ground [s]; null: nothing opens. */
  readonly descentTime?: number | null;

  /** The motor has an ejection charge. */
  readonly hasCharge?: boolean;
  /** Electronics opens the rocket. */
  readonly electronics?: boolean;
  /** Airspeed that nine in ten openings at the delay to cut stay below [m/s]; null: there are none. */
  readonly openingSpeed90?: number | null;
  /** Highest airspeed of a clean opening, by the plan [m/s]. */
  readonly openingSpeedLimit?: number;
  /** The recovery's strength is rated; null: no charge of the motor's opens it. */
  readonly strengthRated?: boolean | null;
  /** Odds that the recovery holds, at the setting where they are best, 0…1; null: no setting. */
  readonly bestHolds?: number | null;
  /** Odds of a clean opening at the delay to cut, 0…1; null: no setting, or a back-up charge. */
  readonly clean?: number | null;
  /** Odds that a back-up charge fires before the electronics; null: no back-up charge. */
  readonly firesFirst?: number | null;
  /** Least odds by the plan, 0…1. */
  readonly leastHolds?: number;
  readonly leastClean?: number;
  /** The delay that would open best if any could be made [s]; null: none asked for. */
  readonly wantedDelay?: number | null;
  /** Delays that can still be made [s]; null: the motor has none. */
  readonly reachableDelays?: Extremes | null;
  /** The delay is as it is: nothing at hand, or on a card, is to set it otherwise. */
  readonly delayFixed?: boolean;
  /** The flyer's own setting: its delay [s], and its odds, null where it cannot be made; null: none. */
  readonly choice?: {
    readonly delay: number;
    readonly odds: { readonly clean: number; readonly holds: number } | null;
  } | null;
  /** An element that was cut too deep: its delay now [s], and that nothing helps; null: it was not. */
  readonly overCut?: { readonly delay: number; readonly doNotFly: boolean } | null;

  /** Something was cut off the delay, or is to be. */
  readonly cuts?: boolean;
  /** Taken off the delay in all [s]. */
  readonly removed?: number;
  /** The most that may be taken off, by the maker, what must stay in allowed for [s]; null: the maker states none. */
  readonly mostRemoved?: number | null;
  /** The flyer has read in the motor's own instructions that its delay may be cut. */
  readonly instructionsConfirmed?: boolean;
  /** The tool that those instructions name; null: none. */
  readonly toolNamed?: string | null;
  /** The tool at hand; null: none. */
  readonly tool?: string | null;
}

/** Name of a fact. */
export type FactName = keyof RuleFacts;

/** Facts of which the named ones are known. */
export type Known<Name extends FactName> = RuleFacts & { readonly [K in Name]-?: NonNullable<RuleFacts[K]> };

/** Is a fact not known, or a number within it? One that is null is known: there is none. */
export function isMissing(facts: RuleFacts, name: FactName): boolean {
  return isUnknown(facts[name]);
}

function isUnknown(fact: unknown): boolean {
  if (typeof fact === "object" && fact !== null) return Object.values(fact).some(isUnknown);
  return fact === undefined || (typeof fact === "number" && !Number.isFinite(fact));
}
