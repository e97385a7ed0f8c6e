import type { Candidate, DrawnFigures, Odds, OpenPlan, RankedMotor, RefusedMotor } from "../src/index.js";
import { adjustableMotor, calmPlan } from "./plan.js";
import { settingWith } from "./settings.js";

const { motor: _, ...opened } = calmPlan;

/** A calm day on which the reference motor is good: every delay it wants can be cut. */
export const openPlan: OpenPlan = { ...opened, stated: { certification: 2 } };

/** The reference motor, its thrust and propellant scaled alike. */
export function candidate(id: string, scale = 1, change: Partial<Candidate["motor"]> = {}): Candidate {
  const { thrust, propellantMass, loadedMass } = adjustableMotor;
  const motor = {
    ...adjustableMotor,
    thrust: { ...thrust, thrusts: thrust.thrusts.map((newtons) => scale * newtons) },
    propellantMass: scale * propellantMass,
    loadedMass: loadedMass - propellantMass + scale * propellantMass,
    ...change,
  };
  return { id, motor, stated: { motorCertified: true } };
}

/** What a ranked motor is told with, made up for tests of order and grouping. */
export interface MadeUp {
  readonly height?: number;
  readonly odds?: Partial<Odds> | null;
  readonly opens?: number;
  readonly price?: number;
}

const figures = { motorClass: "H", totalImpulse: 200, averageThrust: 150, thrustToWeight: 8 };
const launch = { guideExitSpeed: 18, marginAtGuideExit: 1.5, marginAtBurnout: 2 };

/** A ranked motor with figures made up for a test. */
export function rankedWith(id: string, { height = 500, odds = {}, opens, price }: MadeUp = {}): RankedMotor {
  const openingSpeed = opens === undefined ? null : { p05: 1, p50: 0.5 * opens, p90: opens, p95: opens + 1 };
  const toCut: DrawnFigures["toCut"] =
    odds === null
      ? null
      : {
          ...settingWith(9, odds, { openingSpeed }),
          why: "best-odds",
          reachesLeast: true,
          reachesHolds: true,
        };
  const drawn = { height: { p05: 0.9 * height, p50: height, p95: 1.1 * height }, toCut, draws: 500 };
  return { outcome: "ranked", id, price: price ?? null, figures, launch, drawn, looks: [], notChecked: [] };
}

/** A refused motor with reasons made up for a test. */
export function refusedWith(id: string, ...codes: readonly RefusedMotor["refusals"][number]["code"][]): RefusedMotor {
  const [first, ...others] = codes.map((code) => ({
    code,
    value: 1,
    limit: 2,
    unit: "",
    sense: "least" as const,
    details: [],
    source: "made up",
    edition: "",
    status: "own default, no source" as const,
  }));
  if (first === undefined) throw new Error("a reason is wanted");
  return { outcome: "refused", id, price: null, figures, launch: null, drawn: null, refusals: [first, ...others] };
}
