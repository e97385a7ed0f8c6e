import type { PrepStepId } from "./step.js";

interface Written {
  /** Initials. */
  readonly by: string;
  /** As it was written down; the engine only hands it on. */
  readonly when: string;
  /** The same moment on any steady clock [s]; null: not known. */
  readonly at: number | null;
}

/** A step was signed. */
export interface PrepSigned extends Written {
  readonly kind: "sign";
  /** A name that is not known (from a later version) is kept and counts for nothing. */
  readonly step: string;
  /** What it rested on. */
  readonly rests: string | null;
}

/** A signature was taken back. */
export interface PrepUnsigned extends Written {
  readonly kind: "unsign";
  readonly step: string;
  readonly reason: string;
}

/** The flight was called off for now, or the motor did not light. */
export interface PrepTurned extends Written {
  readonly kind: "scrub" | "misfire";
  readonly reason: string;
}

/** What is written down, oldest first. It is only ever added to. */
export type PrepEvent = PrepSigned | PrepUnsigned | PrepTurned;

/** Where each thing stands last in a log; -1: nowhere. */
export interface LogIndex {
  readonly signed: (step: PrepStepId, before?: number) => number;
  readonly unsigned: (step: PrepStepId) => number;
  readonly turned: (kind: PrepTurned["kind"]) => number;
}

/** Reads a log once for many questions. */
export function indexLog(events: readonly PrepEvent[]): LogIndex {
  const places = new Map<string, number[]>();
  for (const [i, event] of events.entries()) {
    const key = "step" in event ? `${event.kind} ${event.step}` : event.kind;
    const list = places.get(key);
    if (list === undefined) places.set(key, [i]);
    else list.push(i);
  }
  const last = (key: string, before = events.length): number => places.get(key)?.findLast((i) => i < before) ?? -1;
  return {
    signed: (step, before) => last(`sign ${step}`, before),
    unsigned: (step) => last(`unsign ${step}`),
    turned: (kind) => last(kind),
  };
}
