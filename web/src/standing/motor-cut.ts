import {
  type MotorDocument,
  type MotorInHandDocument,
  parseQuantity,
  type Raw,
  type Reading,
  type ReadingMeans,
  readingMeans,
  readValue,
  type ToolDocument,
} from "@delaywright/documents";
import type { PlanDocuments } from "./plan-documents.js";

/** A motor in hand with its readings, as far as its documents are right. */
export interface MotorCut {
  readonly inHand: Raw;
  readonly motor: MotorDocument;
  readonly tool: ToolDocument | undefined;
  /** Oldest first. */
  readonly readings: readonly Reading[];
  /** From the rim to the grain before the first cut, as typed; undefined: not read yet. */
  readonly before: string | undefined;
  /** The same after the last cut; undefined: not cut yet. */
  readonly after: string | undefined;
  /** When the last depth after a cut was read; undefined: never. */
  readonly readAt: string | undefined;
}

function documentOf<D>(raw: Raw | undefined, kind: string): D | undefined {
  if (raw === undefined) return undefined;
  const read = readValue(raw, { file: "" });
  return read.state === "ready" && read.kind === kind ? (read.document as D) : undefined;
}

/** The motor in hand of a plan; null where none is chosen, or where its documents are not right yet. */
export function motorCutOf({ inHand, motor, tool }: PlanDocuments): MotorCut | null {
  if (inHand === null || motor === null) return null;
  const own = documentOf<MotorInHandDocument>(inHand.raw, "motor-in-hand");
  const type = documentOf<MotorDocument>(motor.raw, "motor");
  if (own === undefined || type === undefined) return null;
  const readings = own.readings ?? [];
  const last = readings.findLast(({ after }) => after !== undefined);
  return {
    inHand: inHand.raw,
    motor: type,
    tool: documentOf<ToolDocument>(tool?.raw, "tool"),
    readings,
    before: readings.find(({ before }) => before !== undefined)?.before,
    after: last?.after,
    readAt: last?.when,
  };
}

/** What the last depth that was read means; null before the first cut. */
export function lastMeaning({ inHand, motor, tool, readings, after }: MotorCut): ReadingMeans | null {
  if (after === undefined) return null;
  const at = readings.findLastIndex((reading) => reading.after !== undefined);
  const reading = readings[at];
  if (reading === undefined) return null;
  const earlier = { ...inHand, readings: readings.slice(0, at) };
  return readingMeans({ inHand: earlier, motor, tool, reading });
}

/** A depth as typed [m]; null where it cannot be read. */
export function depthOf(text: string | undefined): number | null {
  const parsed = text === undefined ? undefined : parseQuantity(text, "length");
  return parsed?.ok === true ? parsed.value : null;
}

/** `11:04` of a moment, or the moment as it is. */
export function timeOf(when: string): string {
  return /T(\d\d:\d\d)/.exec(when)?.[1] ?? when;
}
