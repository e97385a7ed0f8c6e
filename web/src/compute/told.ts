import type { DecisionData, FieldZones, Issue, MotorShelf, OpenContext, SteadinessData } from "@delaywright/documents";
import type {
  DelayOdds,
  Density,
  FanPart,
  FlightSampleChunk,
  GroundEllipse,
  HeightFan,
  JudgedMotor,
  Limits,
  OutlinePoints,
  PlanWindow,
  TrajectoryColumns,
  WindowEnd,
} from "@delaywright/engine";

export type { PlanWindow };

/** What is known of a plan: the newest answer, what stands in its way, and how far the computing has come. */
export interface PlanAnswer {
  /** Of the plan's documents as they are now, each with file and path. */
  readonly issues: readonly Issue[];
  /** The newest answer there is: of the last right documents while something is wrong. */
  readonly told: Told | null;
  /** `told` belongs to the documents as they are now. */
  readonly fresh: boolean;
  /** Not all draws of the documents as they are now are flown; `progressOf` says how many. */
  readonly settling: boolean;
  /** What went wrong with the computing, in words; it starts again by itself where it can. */
  readonly failure: string | null;
  /** Later than `told`, in the background; of the last settled answer until new ones come. */
  readonly pictures: PictureData | null;
  /** `pictures` belongs to `told`. */
  readonly pictured: boolean;
}

/** One answer: after the first draws rough, after all of them settled. */
export interface Told {
  readonly data: DecisionData;
  /** Of the coast time, seconds after burnout; null without spread. */
  readonly density: Density | null;
  readonly facts: PlanFacts;
  readonly draws: number;
  readonly of: number;
}

/** All draws are in it. */
export function isSettled({ draws, of }: Told): boolean {
  return draws >= of;
}

/** What screens need of the inputs: SI units, plain data. */
export interface PlanFacts {
  readonly element: ElementFacts;
  /** From firing to line stretch [s]. */
  readonly lineStretch: number;
  /** Burnout from ignition [s]. */
  readonly burnEnd: number;
  readonly limits: Limits;
  /** With the loaded motor and ballast [kg], from the nose tip [m]. */
  readonly readyMass: number;
  readonly readyBalance: number;
  /** Without motor, with ballast. */
  readonly massWithoutMotor: number;
  readonly balanceWithoutMotor: number;
  /** Largest diameter, and length [m]. */
  readonly diameter: number;
  readonly length: number;
  readonly thrust: { readonly times: readonly number[]; readonly newtons: readonly number[] };
  /** [N s] */
  readonly totalImpulse: number;
  readonly motorClass: string;
  /** [N] */
  readonly averageThrust: number;
  readonly outline: OutlinePoints;
  readonly zones: FieldZones | null;
  /** Above the pad [m]. */
  readonly ceiling: number | null;
  /** Travel until the rocket is free [m]. */
  readonly guideTravel: number;
  /** Near the ground: speed [m/s], where it blows from [rad] (null in a calm), height of the reading [m]. */
  readonly wind: { readonly speed: number; readonly from: number | null; readonly height: number };
  readonly tool: ToolFacts | null;
  /** Electronics opens the rocket first; the motor's charge stands behind it. */
  readonly electronics: boolean;
  /** The motor's instructions are confirmed to allow shortening the delay, with the tool of the plan. */
  readonly cutAllowed: boolean;
}

/** The delay element. */
export interface ElementFacts {
  readonly kind: "adjustable" | "fixed" | "none";
  /** Delay of the uncut element [s]; 0 without one. */
  readonly longest: number;
  /** Most that may be taken out [s]; null where the maker names no limit. */
  readonly mostRemoved: number | null;
  /** Least that must be left [s]. */
  readonly leastLeft: number;
  /** Depth of grain for one second [m/s]; the motor's, else the tool's; null: unknown. */
  readonly depthPerSecond: number | null;
  /** Taken out so far: depth [m], and the delay that it burned [s]. */
  readonly removedDepth: number;
  readonly removed: number;
  readonly clock: "burnout" | "ignition";
}

/** The tool, every amount as a depth of grain [m]. */
export type ToolFacts =
  | {
      readonly kind: "ends";
      readonly name: string;
      readonly ends: readonly { readonly name: string; readonly removes: number }[];
      readonly spacers: readonly { readonly name: string; readonly keepsBack: number; readonly count: number }[];
      readonly depthError: number;
    }
  | {
      readonly kind: "stop";
      readonly name: string;
      readonly from: number;
      readonly to: number;
      readonly step: number;
      readonly depthError: number;
    };

/** What the pictures show beside the answer, opened at the flyer's choice, else at the delay to cut. */
export interface PictureData {
  /** Odds over delays, achievable or not, rising; none for a motor without one. */
  readonly curve: readonly DelayOdds[];
  /** The delay that the sample was opened at [s]; null for a motor without one. */
  readonly delay: number | null;
  /** Of a motor without delay nothing opens in it. */
  readonly sample: FlightSampleChunk;
  readonly fans: Readonly<Record<FanPart, HeightFan>>;
  readonly ellipses: { readonly opened: Ellipses; readonly unopened: Ellipses };
  /** The nominal flight, opened, and the same with nothing opening. */
  readonly trajectory: TrajectoryColumns;
  readonly unopenedTrajectory: TrajectoryColumns;
  readonly shares: { readonly opened: LandingShares; readonly unopened: LandingShares };
}

/** Ellipses that hold half and 95 % of the landings; null for fewer than three. */
export interface Ellipses {
  readonly half: GroundEllipse | null;
  readonly most: GroundEllipse | null;
}

/** Shares of the sampled landings, 0…1. */
export interface LandingShares {
  /** Beyond the field's boundary; null without one. */
  readonly outside: number | null;
  /** Inside each keep-off zone, in the order of `facts.zones.keepOff`. */
  readonly keepOff: readonly number[];
}

/** A plan on the bench: the last answer known, or why there is none. */
export interface Brief {
  /** `waiting`: queued or under way; `wrong`: the documents have issues. */
  readonly state: "waiting" | "settled" | "wrong" | "failed";
  readonly issues: readonly Issue[];
  /** Of the documents as they are now where `state` is `settled`, else the last known. */
  readonly told: Told | null;
  /** What went wrong with the computing, in words. */
  readonly failure: string | null;
}

/** The weather that the motor as it is bears, for the pad. */
export interface WindowAnswer {
  readonly state: "off" | "waiting" | "ready" | "wrong" | "failed";
  /** Null also where the motor has no delay. */
  readonly window: PlanWindow | null;
  /** `window` belongs to the documents as they are now. */
  readonly fresh: boolean;
  readonly failure: string | null;
}

/** How steadily the plan flies as a rigid body. */
export interface SteadinessAnswer {
  readonly state: "off" | "waiting" | "ready" | "wrong" | "failed";
  /** Of the documents as they are now where `fresh`, else the last known. */
  readonly steadiness: SteadinessData | null;
  readonly fresh: boolean;
  readonly failure: string | null;
}

/** Odds over wind and tilt at one delay. */
export interface WindowData {
  readonly delay: number;
  /** Wind at the height of the reading [m/s], rising. */
  readonly winds: readonly number[];
  /** Lean of the guide [rad], rising. */
  readonly tilts: readonly number[];
  /** Clean and holding odds: rows by tilt, columns by wind. */
  readonly clean: readonly (readonly number[])[];
  readonly holds: readonly (readonly number[])[];
  /** Up to which wind it stays good, by tilt, and what ends it. */
  readonly ends: readonly WindowEnd[];
}

/** What a shortlist is asked about. */
export interface ShortlistShelf extends Pick<MotorShelf, "names" | "unread"> {
  readonly context: OpenContext;
  readonly limits: Limits;
  /** The field's, above the pad [m]. */
  readonly ceiling: number | null;
  /** Paths of the motors that can be judged. */
  readonly motors: readonly string[];
  /** Flights drawn for each of them, from this seed. */
  readonly draws: number;
  readonly seed: number;
  readonly model: "pitching" | "aligned";
}

/** The motors of the library against a plan, as far as they are judged. */
export interface ShortlistAnswer {
  /** `wrong`: the plan has issues, whatever its motor. */
  readonly state: "waiting" | "ready" | "wrong" | "failed";
  /** Of the plan's documents as they are now. */
  readonly issues: readonly Issue[];
  /** Null: not known yet. */
  readonly shelf: ShortlistShelf | null;
  /** By the motor's path. Rows of before stay until they are judged anew. */
  readonly rows: ReadonlyMap<string, JudgedMotor>;
  /** Motors that are still to be judged against the documents as they are now. */
  readonly waiting: ReadonlySet<string>;
  /** What went wrong with the computing, in words. */
  readonly failure: string | null;
}
