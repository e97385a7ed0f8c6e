import { depthReading } from "@delaywright/engine";
import { defaultDepthError } from "../../defaults.js";
import type { Issue } from "../../issue.js";
import type { Raw } from "../../migrate.js";
import { parseQuantity } from "../../quantity/parse.js";
import { readValue } from "../../read.js";
import type { MotorDocument } from "../motor/schema.js";
import { si, siOr } from "../si.js";
import type { ToolDocument } from "../tool/schema.js";
import type { MotorInHandDocument } from "./schema.js";

/** One reading of a motor in hand, as it is written down. */
export type Reading = NonNullable<MotorInHandDocument["readings"]>[number];

export interface ReadingInputs {
  /** The motor in hand, as it is before the reading. */
  readonly inHand: Raw;
  /** Its type. */
  readonly motor: MotorDocument;
  /** Its depth per second counts where the motor names none. */
  readonly tool?: ToolDocument | undefined;
  /** As typed. */
  readonly reading: Reading;
  /** Depth in all that was meant to be taken out [m]; left out: nothing was planned. */
  readonly planned?: number | undefined;
}

/** What a reading says, before it is written down. */
export interface ReadingMeans {
  /** Depth taken out in all [m]; null where it cannot be told yet. */
  readonly removed: number | null;
  /** Seconds taken out in all, the delay that is left, and one sigma of it from the two readings [s]. */
  readonly removedSeconds: number | null;
  readonly delay: number | null;
  readonly sd: number | null;
  /** How much more was taken out than planned [m], negative for less; null without a plan. */
  readonly beyondPlan: number | null;
  /** More than two caliper readings can be wrong by. */
  readonly deeperThanPlanned: boolean;
  /** Why it cannot be written down as it is; paths as in the document with it. */
  readonly issues: readonly Issue[];
}

/** One sigma of the difference of two readings [m]. */
const DIFFERENCE_ERROR = defaultDepthError.reading * Math.SQRT2;
/** So many sigma count as deeper than planned: own default, no source. */
const SURE = 2;

/**
 * What a depth reading would mean, before it is written down: the delay that is left, and what is wrong with the reading.
 *
 * A depth that was read before a first cut stays the one from which every later cut counts.
 *
 * @param inputs the motor in hand, its type, the tool, and the reading as typed
 * @returns metres and seconds, and every issue of the reading
 * @example
 * readingMeans({ inHand, motor, reading: { when: "2026-05-02T10:12", before: "22.2 mm", after: "25.4 mm" } }).delay; // 9.97
 */
export function readingMeans({ inHand, motor, tool, reading, planned }: ReadingInputs): ReadingMeans {
  const issues = issuesOf(inHand, reading);
  const before = firstBefore(inHand) ?? depthOf(reading.before);
  const after = depthOf(reading.after);
  const unknown = { removed: null, removedSeconds: null, delay: null, sd: null, beyondPlan: null };
  if (before === undefined || after === undefined) return { ...unknown, deeperThanPlanned: false, issues };
  const { delay: element } = motor;
  const longest = element.kind === "adjustable" ? si(element.longest, "time") : undefined;
  const own = element.kind === "adjustable" ? element.depthPerSecond : undefined;
  const depthPerSecond = siOr(own ?? tool?.depthPerSecond, "length", undefined);
  const removed = depthReading({
    longest: longest ?? 0,
    before,
    after,
    depthPerSecond: depthPerSecond ?? 1,
  }).removedDepth;
  const beyondPlan = planned === undefined ? null : removed - planned;
  const deeperThanPlanned = beyondPlan !== null && beyondPlan > SURE * DIFFERENCE_ERROR;
  if (longest === undefined || depthPerSecond === undefined)
    return { ...unknown, removed, beyondPlan, deeperThanPlanned, issues };
  const read = depthReading({ longest, before, after, depthPerSecond, readingError: defaultDepthError.reading });
  const tooDeep = read.delay < 0 ? [beyondElement(inHand, reading, longest)] : [];
  return {
    removed,
    removedSeconds: read.removed,
    delay: read.delay,
    sd: read.delaySd,
    beyondPlan,
    deeperThanPlanned,
    issues: [...issues, ...tooDeep],
  };
}

/**
 * A motor in hand with one more reading. What was read before stays as it is.
 *
 * @param inHand the document
 * @param reading when, depths, end, spacers, note
 * @throws {RangeError} where its readings are no list, so that nothing is ever written over
 * @example
 * withReading(bag, { when: "2026-05-02T10:12", after: "24.6 mm" });
 */
export function withReading(inHand: Raw, reading: Reading): Raw {
  const { readings = [] } = inHand as { readonly readings?: unknown };
  if (!Array.isArray(readings)) throw new RangeError("readings must be a list");
  return { ...inHand, readings: [...(readings as unknown[]), reading] };
}

function listOf(inHand: Raw): readonly unknown[] {
  return Array.isArray(inHand["readings"]) ? (inHand["readings"] as unknown[]) : [];
}

/** What the document with the reading is told about that reading. */
function issuesOf(inHand: Raw, reading: Reading): Issue[] {
  const place = `readings[${listOf(inHand).length}]`;
  const { issues } = readValue({ ...inHand, readings: [...listOf(inHand), reading] }, { file: "" });
  return issues.filter((issue) => issue.path === place || issue.path.startsWith(`${place}.`));
}

/** The depth before the first cut, as it was read earlier [m]. */
function firstBefore(inHand: Raw): number | undefined {
  for (const each of listOf(inHand)) {
    const before = depthOf((each as { readonly before?: unknown } | null)?.before);
    if (before !== undefined) return before;
  }
  return undefined;
}

function depthOf(text: unknown): number | undefined {
  const parsed = typeof text === "string" ? parseQuantity(text, "length") : undefined;
  return parsed?.ok === true ? parsed.value : undefined;
}

function beyondElement(inHand: Raw, { after = "" }: Reading, longest: number): Issue {
  return {
    file: "",
    path: `readings[${listOf(inHand).length}].after`,
    code: "cut-beyond-longest",
    found: JSON.stringify(after),
    accepted: `a depth that takes out no more than ${longest} s`,
    example: "",
  };
}
