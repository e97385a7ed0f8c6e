import type { Issue, Raw, SteadinessData } from "@delaywright/documents";
import type { Candidate, EnsembleChunk, EnsembleSpec, JudgedMotor, ShortlistSpec } from "@delaywright/engine";
import type { PictureData, PlanWindow, ShortlistShelf, Told } from "./told.js";

/** A document as the desk keeps it: read, or as the text that could not be. */
export interface DeskDocument {
  readonly path: string;
  readonly raw: Raw | null;
  readonly text: string | null;
  /** By field: texts typed that cannot be read yet; `raw` has the last right value. */
  readonly drafts: Readonly<Record<string, string>>;
}

/**
 * What may be asked of a plan.
 *
 * `plan`: the answer in stages, then its pictures; `brief`: the settled answer alone; `window`: odds over wind and tilt;
 * `steadiness`: flown once as a rigid body beside the default model; `shortlist`: every motor of the library against it.
 */
export type Ask = "plan" | "window" | "steadiness" | "brief" | "shortlist";

/** From the page to the desk: messages are taken in the order they were sent. */
export type ToDesk =
  | { readonly kind: "documents"; readonly put: readonly DeskDocument[]; readonly remove: readonly string[] }
  | { readonly kind: "ask"; readonly job: number; readonly ask: Ask; readonly plan: string }
  | { readonly kind: "drop"; readonly job: number };

/** From the desk to the page: each names the job that it belongs to. */
export type FromDesk =
  /** Comes first: what is wrong with the documents, and which ones were looked at. Nothing follows where `right` is false. */
  | {
      readonly kind: "read";
      readonly job: number;
      readonly issues: readonly Issue[];
      readonly files: readonly string[];
      readonly right: boolean;
    }
  | { readonly kind: "beat"; readonly job: number; readonly done: number; readonly of: number }
  | { readonly kind: "told"; readonly job: number; readonly told: Told }
  | { readonly kind: "pictures"; readonly job: number; readonly pictures: PictureData }
  /** Null: the motor has no delay. */
  | { readonly kind: "window"; readonly job: number; readonly window: PlanWindow | null }
  | { readonly kind: "steadiness"; readonly job: number; readonly steadiness: SteadinessData }
  /** Before the rows of a shortlist: what it is asked about. */
  | { readonly kind: "shelf"; readonly job: number; readonly shelf: ShortlistShelf }
  /** Motors of a shortlist that were judged since the last such message. */
  | { readonly kind: "rows"; readonly job: number; readonly rows: readonly JudgedMotor[] }
  | { readonly kind: "done"; readonly job: number }
  /** The job met a defect; nothing follows. */
  | { readonly kind: "failed"; readonly job: number; readonly reason: string };

/** From any worker to the page: it holds its lock. */
export interface Held {
  readonly kind: "held";
}

/**
 * From the desk to a flyer: an ensemble once, then runs of its draws; a new ensemble drops what waits of older ones, and so does
 * `stop`, once nobody waits for the runs any more. Or a short ensemble to fly whole. Or a motor to judge whole, by a number that
 * rises; nobody waits for it any more once it, or a later one, is left.
 */
export type ToFlyer =
  | { readonly kind: "ensemble"; readonly ensemble: number; readonly spec: EnsembleSpec }
  | {
      readonly kind: "run";
      readonly ensemble: number;
      readonly from: number;
      readonly to: number;
      /** Handed back: the flyer may fly the next draws into it. */
      readonly memory?: ArrayBuffer;
    }
  | { readonly kind: "stop" }
  | {
      readonly kind: "whole";
      readonly whole: number;
      readonly spec: EnsembleSpec;
      readonly from: number;
      readonly to: number;
    }
  | {
      readonly kind: "motor";
      readonly number: number;
      readonly spec: ShortlistSpec;
      readonly candidate: Candidate;
    }
  | { readonly kind: "leave"; readonly number: number };

/** A run that was flown. */
export interface Flown {
  readonly ensemble: number;
  readonly chunk: EnsembleChunk;
}

/** A short ensemble that was flown, by its number. */
export interface FlownWhole {
  readonly whole: number;
  readonly chunk: EnsembleChunk;
}

/** A motor that was judged, by its number. */
export interface JudgedByFlyer {
  readonly number: number;
  readonly judged: JudgedMotor;
}

/** From a flyer to the desk. */
export type FromFlyer = Flown | FlownWhole | JudgedByFlyer;

/** First message to the desk: the other ends of its flyers' ports. */
export interface HiredDesk<Port> {
  readonly kind: "hired";
  readonly flyers: readonly Port[];
  /** Name of a lock to hold as long as the worker lives; null where the browser has none. */
  readonly lock: string | null;
}

/** The one message from the page to a flyer: the way to its desk. */
export interface HiredFlyer<Port> {
  readonly desk: Port;
  readonly lock: string | null;
}

/** A way to send messages, and hand over the memory behind some of their parts. */
export type Post<Message> = (message: Message, transfer?: readonly ArrayBuffer[]) => void;
