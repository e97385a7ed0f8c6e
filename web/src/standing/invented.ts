import type { DecisionData, Raw, SettingData } from "@delaywright/documents";
import type { Told } from "../compute/index.js";
import type { Entry } from "../store/index.js";
import type { PartOfPlan, PlanDocuments } from "./plan-documents.js";

/** A setting of an invented answer, for tests. */
export function inventedSetting(more: Partial<SettingData> = {}): SettingData {
  return {
    delay: 9,
    removed: 5,
    end: "A",
    spacers: ["ring"],
    depth: 0.004,
    odds: {
      clean: 0.93,
      holds: 0.999,
      earlyFast: 0.03,
      lateFast: 0.04,
      leanFast: 0,
      low: 0,
      grounded: 0,
      error: 0.006,
      holdsError: 0.001,
    },
    openingSpeed: { p05: 6, p50: 12, p90: 18.2, p95: 21 },
    openingHeight: { p05: 540, p10: 565.7, p50: 600 },
    secondsFromApogee: { p05: -1.5, p50: 0, p95: 1.7 },
    delaySd: 0.9,
    firesFirst: null,
    ...more,
  };
}

/** What tests change of an invented answer. */
export interface Invented {
  readonly data?: Readonly<Record<string, unknown>>;
  readonly facts?: Readonly<Record<string, unknown>>;
}

/** An invented answer with as much in it as words about a plan are made from, for tests. */
export function inventedTold({ data = {}, facts = {} }: Invented = {}): Told {
  const setting = inventedSetting();
  const toCut = { ...setting, reachesLeast: true, reachesHolds: true, why: "most-clean", reasons: [], helps: [] };
  const whole = {
    context: { plan: "Demo", rocket: "Demo rocket 76", motor: "Demo H150" },
    given: { delayKind: "adjustable", removedDepth: null, guide: { travel: 2, tilt: 0, toward: 0 } },
    settings: [setting],
    toCut,
    choice: null,
    overCut: null,
    opened: null,
    checks: [],
    limits: { openingSpeed: 20, openingHeight: 100, leastClean: 0.8, leastHolds: 0.99 },
    ...data,
  } as unknown as DecisionData;
  return {
    data: whole,
    density: null,
    facts: {
      element: { kind: "adjustable", longest: 14, depthPerSecond: 0.0008, removedDepth: 0, removed: 0 },
      cutAllowed: true,
      massWithoutMotor: 1.95,
      wind: { speed: 2, from: 4, height: 2 },
      ...facts,
    } as unknown as Told["facts"],
    draws: 10_000,
    of: 10_000,
  };
}

/** A document of an invented plan, for tests. */
export function inventedPart(path: string, raw: Raw, within = ""): PartOfPlan {
  return { path, within, name: String(raw["name"] ?? ""), raw };
}

/** An invented plan with its documents, for tests. */
export function inventedDocuments(more: Partial<PlanDocuments> = {}, plan: Raw = {}): PlanDocuments {
  const whole = { kind: "plan", version: 1, name: "Demo", ...plan };
  return {
    plan: { path: "demo.plan.json", name: "Demo", raw: whole } as unknown as Entry,
    rocket: inventedPart("demo-76.rocket.json", { name: "Demo rocket 76" }),
    motor: inventedPart("demo-h150.motor.json", { name: "Demo H150" }),
    inHand: null,
    tool: null,
    field: null,
    flyer: null,
    ruleSet: null,
    ...more,
  };
}
