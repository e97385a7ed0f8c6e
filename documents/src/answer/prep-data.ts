import {
  airframeWithBallast,
  burnOf,
  type Check,
  type DecisionInputs,
  distanceRow,
  loadedAt,
  type PrepEvent,
  type PrepFacts,
  type PrepState,
  prepState,
  prepSteps,
} from "@delaywright/engine";
import { si, siOr } from "../kinds/si.js";
import type { PlanParts } from "../load-plan.js";
import { planToEngine } from "../to-engine.js";
import { kindOfCut } from "../words/cut.en.js";
import { flownSetting } from "../words/headline.en.js";
import { type CutData, cutData, type DecisionData } from "./decision-data.js";
import type { WindData } from "./given-data.js";
import { prepBasis } from "./prep-basis.js";

/** Some shear pins of one size. */
interface PinData {
  readonly size: string;
  readonly count: number;
}

interface CanopyData {
  readonly shape: string;
  /** [m] */
  readonly diameter: number;
}

/** The plan's own figures that stand on its prep sheet: SI units. */
export interface PrepFigures {
  readonly rocket: string;
  readonly motor: string;
  readonly designation: string | null;
  readonly maker: string | null;
  /** Names of the motor in hand, as far as they are written down; null where none is chosen. */
  readonly inHand: { readonly name: string; readonly label: string | null; readonly lot: string | null } | null;
  readonly flyer: string | null;
  readonly field: string | null;
  /** Of the motor's own delay; null for a plugged motor. */
  readonly delay: number | null;
  /** The tool of the plan, and the one that the motor's instructions name. */
  readonly tool: string | null;
  readonly instructionsTool: string | null;
  /** Depth from the rim to the grain before the first cut, and what was taken out since [m]; null: not read. */
  readonly firstDepth: number | null;
  readonly removedDepth: number | null;
  /** Of the motor, and what its well holds [kg]. */
  readonly charge: number | null;
  readonly wellHolds: number | null;
  /** Reckoned for the bay [kg]; null where no bay is given. */
  readonly bayCharge: number | null;
  readonly pins: readonly PinData[];
  readonly retention: "positive" | "friction" | "none" | null;
  readonly main: CanopyData & { readonly opensAt: number | null };
  readonly drogue: CanopyData | null;
  /** Length of the harness [m]. */
  readonly harness: number | null;
  /** Ready to fly [kg], [m] from the nose tip. */
  readonly readyMass: number;
  readonly readyBalance: number;
  /** Lean from the vertical and the azimuth it leans to [rad]. */
  readonly guide: { readonly tilt: number; readonly toward: number };
  readonly wind: WindData;
  readonly windTaken: string | null;
  /** Least distance of people by the safety code's table [m]; null beyond the table. */
  readonly people: number | null;
  readonly stops: readonly Check[];
  /** Where it is expected down, opened and unopened [m] of the pad. */
  readonly landing: { readonly east: number; readonly north: number } | null;
  readonly unopened: { readonly east: number; readonly north: number };
  /** The first of two cuts, made at home; null: one cut. */
  readonly homeCut: CutData | null;
}

/** What a plan's prep sheet needs, as plain data: it survives a structured clone, so a worker can hand it over. */
export interface PrepBrief {
  readonly figures: PrepFigures;
  /** The sheet for the flyer's own choice or the delay to cut. */
  readonly planned: PrepTarget;
  /** The sheet for the motor as it is cut now; null where that asks for no other sheet, or does not reach the plan's least odds. */
  readonly asCut: PrepTarget | null;
}

/** A setting and the sheet's facts for it. */
export interface PrepTarget {
  /** Null for a motor without delay. */
  readonly setting: CutData | null;
  readonly facts: PrepFacts;
}

/** A plan's prep sheet as it stands. */
export interface PrepData extends PrepTarget {
  readonly figures: PrepFigures;
  readonly state: PrepState;
}

/** What a brief is made of. */
export interface PrepBriefInputs {
  readonly parts: PlanParts;
  /** A finished decision: one that still settles may change its mind, and take signatures back. */
  readonly data: DecisionData;
}

/**
 * What a plan's prep sheet needs, from its decision.
 *
 * @param inputs documents and decision of the plan
 * @throws {RangeError} where the documents are not those of a plan that can be decided
 * @example
 * prepBrief({ parts, data }).planned.facts.cut; // "to-make"
 */
export function prepBrief({ parts, data }: PrepBriefInputs): PrepBrief {
  const made = planToEngine(parts);
  if (!made.ok) throw new RangeError("the documents make no plan");
  const planned = flownSetting(data) ?? null;
  const { removedDepth } = data.given;
  const asItIs = data.settings.find((each) => kindOfCut(each, removedDepth) === "as-it-is");
  const goodAsItIs =
    data.choice === null &&
    asItIs !== undefined &&
    asItIs !== planned &&
    asItIs.odds.holds >= data.limits.leastHolds &&
    asItIs.odds.clean >= data.limits.leastClean;
  const target = (setting: CutData | null): PrepTarget => ({
    setting: setting === null ? null : cutData(setting),
    facts: factsOf(parts, data, setting),
  });
  return {
    figures: figuresOf(parts, made.inputs, data),
    planned: target(planned),
    asCut: goodAsItIs ? target(asItIs) : null,
  };
}

/**
 * A plan's prep sheet as it stands.
 *
 * Once the depth of a cut was signed for, the motor stays as it is cut while that reaches the plan's least odds: a little more wind does
 * not ask for the motor to be taken out again. The flyer's own choice always counts.
 *
 * @param brief of the plan
 * @param events what was signed, oldest first
 * @example
 * prepData(prepBrief({ parts, data }), []).state.next; // "motor-label"
 */
export function prepData({ figures, planned, asCut }: PrepBrief, events: readonly PrepEvent[]): PrepData {
  const target = asCut !== null && isSettled(asCut.facts, events) ? asCut : planned;
  return { ...target, figures, state: prepState(target.facts, events) };
}

/** Whether the depth as it is was signed for, last of all depths. */
function isSettled(facts: PrepFacts, events: readonly PrepEvent[]): boolean {
  const last = events.findLast((event) => "step" in event && event.step === "depth-after");
  const rests = prepSteps(facts).find(({ id }) => id === "depth-after")?.rests;
  return last?.kind === "sign" && last.rests !== null && last.rests === rests;
}

function factsOf(parts: PlanParts, data: DecisionData, setting: CutData | null): PrepFacts {
  const { bay, recovery } = parts.rocket.document;
  const { removedDepth, delayKind } = data.given;
  const electronics = recovery.electronics !== undefined;
  return {
    delay: delayKind,
    cut: cutOf(data, setting),
    electronics,
    ownCharge: electronics,
    shearPins: [...(bay?.shearPins ?? []), ...(recovery.main.shearPins ?? [])].length > 0,
    drogue: recovery.drogue !== undefined,
    checkSaysStop: data.checks.some(({ verdict }) => verdict === "stop"),
    basis: prepBasis(parts, setting?.delay ?? null, removedDepth),
  };
}

function cutOf({ given, choice, toCut }: DecisionData, setting: CutData | null): PrepFacts["cut"] {
  if (setting === null || given.delayKind !== "adjustable") return "none";
  const kind = kindOfCut(setting, given.removedDepth);
  if (kind === "as-it-is") return "made";
  if (kind === "uncut") return "none";
  if (kind === "not-shown") return "not-confirmed";
  return choice === null && toCut?.reachesHolds === false ? "does-not-hold" : "to-make";
}

function figuresOf(parts: PlanParts, inputs: DecisionInputs, data: DecisionData): PrepFigures {
  const { context, given } = data;
  const { bay, recovery, mount } = parts.rocket.document;
  const { delay } = parts.motor.document;
  const element = delay.kind === "none" ? undefined : delay;
  const first = parts.motorInHand?.document.readings?.find(({ before }) => before !== undefined)?.before;
  const canopy = ({ shape, diameter }: { readonly shape: string; readonly diameter: string }): CanopyData => ({
    shape,
    diameter: si(diameter, "length"),
  });
  const ready = loadedAt(
    airframeWithBallast(inputs.rocket, inputs.ballast),
    { length: inputs.motor.length, diameter: inputs.motor.diameter, aftAt: inputs.rocket.mount.motorAftAt },
    inputs.motor.loadedMass,
  );
  return {
    rocket: context.rocket,
    motor: context.motor,
    designation: context.designation ?? null,
    maker: context.maker ?? null,
    inHand:
      context.motorInHand === undefined
        ? null
        : { name: context.motorInHand, label: context.label ?? null, lot: context.lot ?? null },
    flyer: context.flyer ?? null,
    field: context.field ?? null,
    delay:
      delay.kind === "adjustable"
        ? si(delay.longest, "time")
        : delay.kind === "fixed"
          ? si(delay.seconds, "time")
          : null,
    tool: context.tool ?? null,
    instructionsTool: delay.kind === "adjustable" ? (delay.instructions?.tool ?? null) : null,
    firstDepth: siOr(first, "length", null),
    removedDepth: given.removedDepth,
    charge: siOr(element?.charge, "mass", null),
    wellHolds: siOr(element?.wellHolds, "mass", null),
    bayCharge: data.packing.bay?.needed.charge ?? null,
    pins: [...(bay?.shearPins ?? []), ...(recovery.main.shearPins ?? [])],
    retention: mount.retention ?? null,
    main: { ...canopy(recovery.main.canopy), opensAt: siOr(recovery.main.opensAt, "length", null) },
    drogue: recovery.drogue === undefined ? null : canopy(recovery.drogue.canopy),
    harness: siOr(recovery.harness?.length, "length", null),
    readyMass: ready.mass,
    readyBalance: ready.balance,
    guide: { tilt: given.guide.tilt, toward: given.guide.toward },
    wind: given.wind,
    windTaken: context.weatherTaken ?? null,
    people: distanceRow(burnOf(inputs.motor.thrust).totalImpulse)?.single ?? null,
    stops: data.checks.filter(({ verdict }) => verdict === "stop"),
    landing: data.opened?.landing ? placeOf(data.opened.landing) : null,
    unopened: placeOf(data.unopened),
    homeCut: data.toCut?.homeCut ?? null,
  };
}

function placeOf({ east, north }: { readonly east: number; readonly north: number }) {
  return { east, north };
}
