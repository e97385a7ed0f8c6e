import {
  delayWords,
  depthWords,
  type MotorDocument,
  type Raw,
  type Reading,
  readingMeans,
  readValue,
  type ToolDocument,
} from "@delaywright/documents";

function isKeyed(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function text(value: unknown): string | null {
  return typeof value === "string" && value.trim() !== "" ? value.trim() : null;
}

/**
 * The state of a cut as one reading: the first depth before, the last depth after. Corrections are later readings, so they count.
 *
 * @returns null where nothing was read after a cut
 */
export function wholeReading(inHand: Raw): Reading | null {
  const { readings } = inHand;
  const all = Array.isArray(readings) ? readings.filter(isKeyed) : [];
  const before = text(all.find((reading) => text(reading["before"]) !== null)?.["before"]);
  const last = all.findLast((reading) => text(reading["after"]) !== null);
  const [when, after, end] = [text(last?.["when"]), text(last?.["after"]), text(last?.["end"])];
  if (before === null || after === null || when === null) return null;
  return { when, before, after, ...(end === null ? {} : { end }) };
}

/**
 * A motor in hand as the text of its label's code: what is on the label, and the state of its cut. Import reads it back.
 *
 * @param inHand as typed
 * @example
 * labelText({ kind: "motor-in-hand", version: 1, name: "Bag 3", type: "demo-h150.motor.json", stored: "indoors" });
 * // '{"kind":"motor-in-hand","version":1,"name":"Bag 3","type":"demo-h150.motor.json"}'
 */
export function labelText(inHand: Raw): string {
  const { kind, version, name, type, label, lot, made } = inHand;
  const reading = wholeReading(inHand);
  const readings = reading === null ? undefined : [reading];
  return JSON.stringify({ kind, version, name, type, label, lot, made, readings });
}

/** What stands on a label, in words; null: it is not known. */
export interface LabelWords {
  readonly motor: string | null;
  readonly name: string;
  /** `3`, written on the motor. */
  readonly label: string | null;
  readonly lot: string | null;
  readonly made: string | null;
  /** `Cut to 9 s`, `Not cut: 14 s`. */
  readonly delay: string;
  /** `4.0 mm (5/32 in) out`. */
  readonly removed: string | null;
  readonly before: string | null;
  readonly after: string | null;
  readonly when: string | null;
}

/**
 * What stands on the label of a motor.
 *
 * @param inHand as typed
 * @param type its motor type as typed; null where it is not there
 * @param tool a tool whose depth per second counts where the motor names none; null without one
 */
export function labelWords(inHand: Raw, type: Raw | null, tool: Raw | null): LabelWords {
  const motor = documentOf<MotorDocument>(type, "motor");
  const reading = wholeReading(inHand);
  const head = {
    motor: text(type?.["name"]),
    name: text(inHand["name"]) ?? "unnamed",
    label: text(inHand["label"]),
    lot: text(inHand["lot"]),
    made: text(inHand["made"]),
  };
  if (reading === null)
    return { ...head, delay: `Not cut${uncutWords(motor)}`, removed: null, before: null, after: null, when: null };
  const { before = null, after = null, when } = reading;
  const means =
    motor &&
    readingMeans({ inHand: { ...inHand, readings: [] }, motor, tool: documentOf<ToolDocument>(tool, "tool"), reading });
  const delay = means?.delay ?? null;
  return {
    ...head,
    delay: delay === null || delay < 0 ? "Cut: delay not known" : `Cut to ${delayWords(delay)}`,
    removed: means?.removed == null ? null : `${depthWords(means.removed)} out`,
    before,
    after,
    when,
  };
}

/** A document that is right, as it was typed; undefined where it is not. */
function documentOf<D>(raw: Raw | null, kind: "motor" | "tool"): D | undefined {
  if (raw === null) return undefined;
  const read = readValue(raw, { file: "", kinds: [kind] });
  return read.state === "ready" ? (read.document as D) : undefined;
}

function uncutWords(motor: MotorDocument | undefined): string {
  if (motor === undefined || motor.delay.kind === "none") return "";
  return `: ${motor.delay.kind === "fixed" ? motor.delay.seconds : motor.delay.longest}`;
}
