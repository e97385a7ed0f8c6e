import { same } from "./difference.js";
import type { Content, Entry } from "./entry.js";
import { isKeyed } from "./field.js";
import { contentOf } from "./make-entry.js";
import { takenBack } from "./merge.js";

/** Something that can be undone. */
export interface Step {
  readonly label: string;
  /** [ms] */
  readonly at: number;
  /** A cut was recorded: to be undone only if the flyer confirms. */
  readonly asks: boolean;
}

/**
 * What came of undo or redo.
 *
 * `asks`: to be confirmed first; `changed-elsewhere`: the same field was changed in another tab since; `reading-stays`: a
 * reading is never taken back later than ten minutes after, or once its motor was changed again: record a correction.
 * Steps that are refused for good leave the list, so that the one before can be undone.
 */
export type UndoResult =
  | { readonly ok: true; readonly step: Step; readonly paths: readonly string[] }
  | {
      readonly ok: false;
      readonly reason: "nothing" | "asks" | "changed-elsewhere" | "reading-stays";
      readonly step: Step | null;
      readonly paths: readonly string[];
    };

/** How long a reading that was just written down can be taken back [ms]. */
const TAKE_BACK = 600_000;

interface Change {
  readonly before: Entry | undefined;
  readonly after: Entry | undefined;
}

/** What to record. */
export interface Deed {
  readonly label: string;
  readonly at: number;
  readonly changes: ReadonlyMap<string, Change>;
  /** The field that is being typed in. */
  readonly visit?: string;
  /** What comes out of files can be taken in again. */
  readonly imported?: boolean;
}

interface Recorded extends Deed {
  readonly imported: boolean;
  asks: boolean;
}

/** New contents by path; undefined: take the document away. */
export type Contents = ReadonlyMap<string, Content | undefined>;

const MOST_STEPS = 500;

/** What was done, to be undone. */
export class History {
  private done: Recorded[] = [];
  private undone: Recorded[] = [];
  /** The last step may be joined by more of the same field, or of the same turn. */
  private visit: string | null = null;
  private sameTurn = false;

  /** Adds a step, or joins it to the last. */
  record(deed: Deed): void {
    const last = this.done.at(-1);
    const joins = last !== undefined && this.undone.length === 0 && (this.sameTurn || this.continues(deed, last));
    const step = joins ? joined(last, deed) : { ...deed, imported: deed.imported === true, asks: false };
    if (joins) this.done.pop();
    this.undone = [];
    const changes = new Map([...step.changes].filter(([, change]) => !sameEntry(change.before, change.after)));
    if (changes.size > 0) this.done.push({ ...step, changes, asks: asks(step.imported, changes) });
    if (this.done.length > MOST_STEPS) this.done.shift();
    if (changes.size === 0) {
      this.endMerge();
      return;
    }
    this.visit = deed.visit ?? null;
    if (!this.sameTurn) {
      this.sameTurn = true;
      queueMicrotask(() => {
        this.sameTurn = false;
      });
    }
  }

  /** More of the same field, with nothing from another tab in between: that is not ours to undo. */
  private continues(deed: Deed, last: Recorded): boolean {
    const known = (path: string, { before }: Change) => last.changes.get(path)?.after === before;
    return (
      deed.visit !== undefined &&
      deed.visit === this.visit &&
      [...deed.changes].every(([path, each]) => known(path, each))
    );
  }

  /** The field was left. */
  endMerge(): void {
    this.visit = null;
    this.sameTurn = false;
  }

  /** Forgets all steps that touch a document. */
  forget(path: string): void {
    const others = (step: Recorded) => !step.changes.has(path);
    this.done = this.done.filter(others);
    this.undone = this.undone.filter(others);
    this.endMerge();
  }

  get last(): { readonly undo: Step | null; readonly redo: Step | null } {
    return { undo: stepOf(this.done.at(-1)), redo: stepOf(this.undone.at(-1)) };
  }

  /**
   * Takes the last step back.
   *
   * @param current what is there now
   * @param now [ms]
   * @param confirmed the flyer was asked
   * @param apply makes the changes
   */
  undo(
    current: (path: string) => Entry | undefined,
    now: number,
    confirmed: boolean,
    apply: (contents: Contents) => void,
  ): UndoResult {
    this.endMerge();
    const step = this.done.at(-1);
    if (step === undefined) return { ok: false, reason: "nothing", step: null, paths: [] };
    if (step.asks && !confirmed) return refusal("asks", step);
    this.done.pop();
    if (step.asks && !canTakeBack(step, current, now)) return refusal("reading-stays", step);
    const contents = contentsOf(step, current, (change) => ({ from: change.after, to: change.before }));
    if (contents === undefined) return refusal("changed-elsewhere", step);
    this.undone.push(step);
    apply(contents);
    return { ok: true, step: plain(step), paths: [...step.changes.keys()] };
  }

  /** Makes the last step that was undone again. */
  redo(current: (path: string) => Entry | undefined, apply: (contents: Contents) => void): UndoResult {
    this.endMerge();
    const step = this.undone.pop();
    if (step === undefined) return { ok: false, reason: "nothing", step: null, paths: [] };
    const contents = contentsOf(step, current, (change) => ({ from: change.before, to: change.after }));
    if (contents === undefined) return refusal("changed-elsewhere", step);
    this.done.push(step);
    apply(contents);
    return { ok: true, step: plain(step), paths: [...step.changes.keys()] };
  }
}

function plain({ label, at, asks }: Recorded): Step {
  return { label, at, asks };
}

function stepOf(step: Recorded | undefined): Step | null {
  return step === undefined ? null : plain(step);
}

function refusal(reason: "asks" | "changed-elsewhere" | "reading-stays", step: Recorded): UndoResult {
  return { ok: false, reason, step: plain(step), paths: [...step.changes.keys()] };
}

function joined(last: Recorded, deed: Deed): Recorded {
  const changes = new Map(last.changes);
  for (const [path, { before, after }] of deed.changes) {
    const known = changes.get(path);
    changes.set(path, { before: known === undefined ? before : known.before, after });
  }
  return { ...last, at: deed.at, changes, imported: last.imported && deed.imported === true };
}

function sameEntry(one: Entry | undefined, other: Entry | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  return same(contentOf(one), contentOf(other));
}

/** Whether taking a step back would drop a reading. */
function asks(imported: boolean, changes: ReadonlyMap<string, Change>): boolean {
  return [...changes.values()].some(({ before, after }) => {
    if (before === undefined && imported) return false;
    const now = readingsOf(after);
    const then = readingsOf(before);
    return now.some((reading, index) => !same(reading, then[index]));
  });
}

function readingsOf(entry: Entry | undefined): readonly unknown[] {
  const readings = entry?.kind === "motor-in-hand" && isKeyed(entry.raw) ? entry.raw["readings"] : undefined;
  return Array.isArray(readings) ? readings : [];
}

/** Readings stay, but the newest change of a motor, just made. */
function canTakeBack(step: Recorded, current: (path: string) => Entry | undefined, now: number): boolean {
  if (now - step.at >= TAKE_BACK) return false;
  return [...step.changes].every(
    ([path, { after }]) => after?.kind !== "motor-in-hand" || sameEntry(current(path), after),
  );
}

/** What the documents become; undefined where one was changed elsewhere in the same field. */
function contentsOf(
  step: Recorded,
  current: (path: string) => Entry | undefined,
  way: (change: Change) => { readonly from: Entry | undefined; readonly to: Entry | undefined },
): Contents | undefined {
  const contents = new Map<string, Content | undefined>();
  for (const [path, change] of step.changes) {
    const { from, to } = way(change);
    const now = current(path);
    if (to === undefined) {
      if (now !== undefined && !sameEntry(now, from)) return undefined;
      contents.set(path, undefined);
    } else if (from === undefined || now === undefined) {
      if (now !== undefined || from !== undefined) return undefined;
      contents.set(path, to);
    } else {
      const content = takenBack(now, from, to);
      if (content === undefined) return undefined;
      contents.set(path, content);
    }
  }
  return contents;
}
