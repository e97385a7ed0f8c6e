import { type Doubt, decisionData, motorShelf, openPlan, type PlanContext, planToEngine } from "@delaywright/documents";
import {
  type Decision,
  type DecisionInputs,
  decide,
  defaultShortlistOptions,
  type EnsembleRunner,
  type JudgedMotor,
  type OtherRocket,
  planWindow,
  shortlist,
  standingDelay,
} from "@delaywright/engine";
import { DRAWS } from "../draws.js";
import type { Ask, FromDesk, Post, ToDesk } from "../protocol.js";
import type { PlanFacts } from "../told.js";
import { Cabinet } from "./cabinet.js";
import { factsOf } from "./facts.js";
import { JudgedBefore } from "./judged-before.js";
import { Line } from "./line.js";
import { picturesOf } from "./pictures-data.js";
import type { Share } from "./share.js";
import { shelfOf } from "./shelf.js";
import { steadinessOf } from "./steadiness.js";
import { Dropped, type Task } from "./task.js";
import type { Work } from "./work.js";

/** After how many draws a rough answer is told: once, since each telling draws the page again. */
const STAGES = [256];
const SEED = 1;

/**
 * So long the desk flies nothing after first odds were told [ms]: where there are two cores the page needs one of them to draw
 * them. Flyers fly on.
 */
const DRAWING = 20;

/** Signs of life are given no more often than this [ms]. */
const BEAT = 80;

/** A plan that was made ready for the engine. */
interface Ready {
  /** Of the cabinet, as it was read. */
  readonly revision: number;
  readonly inputs: DecisionInputs;
  readonly context: PlanContext;
  readonly doubts: readonly Doubt[];
  readonly otherRockets: readonly OtherRocket[];
  readonly facts: PlanFacts;
}

/** The last plan that was decided: what else is asked of it, while no document changes, need not fly its draws again. */
interface Decided {
  readonly plan: string;
  readonly revision: number;
  readonly decision: Decision;
}

interface RunnerOptions {
  readonly onDone?: (done: number) => void;
  /** What the desk waits for before it flies itself. */
  readonly after?: () => Promise<void> | undefined;
  /** Nobody waits for it. */
  readonly aside?: boolean;
}

/** What the desk stands on. */
export interface DeskOptions {
  readonly post: Post<FromDesk>;
  readonly share: Share;
  /** Resolves after the messages that have come were taken. */
  readonly tick: () => Promise<void>;
  /** The time now [ms]. */
  readonly now: () => number;
  /** Resolves after so long [ms]. */
  readonly pause: (time: number) => Promise<void>;
  /** Draws of a settled answer; left out: `DRAWS`. */
  readonly draws?: number;
}

/** Answers what is asked of plans, the most urgent first. */
export class Desk {
  private readonly options: DeskOptions;
  private readonly cabinet = new Cabinet();
  private readonly line: Line;
  private readonly draws: number;
  private readonly judgedBefore = new JudgedBefore();
  /** One decision is under way at a time: all gather their draws here. */
  private gathered = new ArrayBuffer(0);
  private lastBeat = 0;
  private last: Decided | null = null;

  constructor(options: DeskOptions) {
    this.options = options;
    this.draws = options.draws ?? DRAWS;
    this.line = new Line(({ job }, error) => this.options.post({ kind: "failed", job, reason: reasonOf(error) }));
  }

  take(message: ToDesk): void {
    switch (message.kind) {
      case "documents":
        for (const path of message.remove) this.cabinet.remove(path);
        for (const document of message.put) this.cabinet.put(document);
        break;
      case "ask":
        this.line.add(this.workOf(message));
        break;
      case "drop":
        this.line.drop(message.job);
    }
  }

  private workOf({ ask, job, plan }: { readonly ask: Ask; readonly job: number; readonly plan: string }): Work {
    const runs: Readonly<Record<Ask, (task: Task) => Promise<void>>> = {
      plan: (task) => this.answerPlan(task, job, plan),
      brief: (task) => this.answerBrief(task, job, plan),
      window: (task) => this.answerWindow(task, job, plan),
      steadiness: (task) => this.answerSteadiness(task, job, plan),
      shortlist: (task) => this.answerShortlist(task, job, plan),
    };
    return { kind: ask, job, plan, run: runs[ask] };
  }

  private async answerPlan(task: Task, job: number, plan: string): Promise<void> {
    const ready = await this.ready(task, job, plan);
    if (ready === null) return this.done(job);
    const decision = await this.decided(task, job, plan, ready, (part) => this.tell(job, ready, part, this.draws));
    this.tell(job, ready, decision, decision.draws);
    const run = async (later: Task): Promise<void> => {
      const { inputs, facts } = ready;
      const beat = () => this.beat(job, this.draws, this.draws);
      const made = await picturesOf(inputs, decision, facts.zones, {
        run: this.runner(later, { onDone: beat, aside: true }),
        step: () => this.step(later, beat),
      });
      this.options.post({ kind: "pictures", job, pictures: made });
      this.done(job);
    };
    this.line.add({ kind: "pictures", job, plan, run });
  }

  private async answerBrief(task: Task, job: number, plan: string): Promise<void> {
    const ready = await this.ready(task, job, plan);
    if (ready !== null) {
      const decision = await this.decided(task, job, plan, ready, (part) => this.tell(job, ready, part, this.draws));
      this.tell(job, ready, decision, decision.draws);
    }
    this.done(job);
  }

  private async answerWindow(task: Task, job: number, plan: string): Promise<void> {
    const ready = await this.ready(task, job, plan);
    if (ready !== null) {
      const decision = await this.decided(task, job, plan, ready);
      const run = this.runner(task, { onDone: () => this.beat(job, this.draws, this.draws), aside: true });
      const { seed, model } = decision;
      const delay = standingDelay(ready.inputs, decision);
      const window =
        delay === null
          ? null
          : await planWindow(ready.inputs, delay, { seed, model, run, pause: () => this.step(task) });
      this.options.post({ kind: "window", job, window });
    }
    this.done(job);
  }

  private async answerSteadiness(task: Task, job: number, plan: string): Promise<void> {
    const ready = await this.ready(task, job, plan);
    if (ready !== null) {
      const beat = () => this.beat(job, 0, 1);
      const steadiness = await steadinessOf(ready.inputs, SEED, () => this.step(task, beat));
      this.options.post({ kind: "steadiness", job, steadiness });
    }
    this.done(job);
  }

  private async answerShortlist(task: Task, job: number, plan: string): Promise<void> {
    const motors = await this.cabinet.motors();
    const { issues, files, parts } = await this.cabinet.readForAnyMotor(plan, motors);
    task.check();
    const opened = parts === undefined ? undefined : openPlan(parts);
    const looked = [...files, ...motors.flatMap(([, loaded]) => loaded.files)];
    if (parts === undefined || opened === undefined || !opened.ok) {
      const all = [...issues, ...(opened === undefined || opened.ok ? [] : opened.issues)];
      this.options.post({ kind: "read", job, issues: all, files: looked, right: false });
      return this.done(job);
    }
    this.options.post({ kind: "read", job, issues, files: looked, right: true });
    const shelf = motorShelf(parts, motors);
    const { draws, model } = defaultShortlistOptions;
    const asked = { draws, seed: SEED, model };
    this.options.post({ kind: "shelf", job, shelf: shelfOf(shelf, opened, asked) });
    const { judges } = this.options.share;
    this.judgedBefore.begin({ plan: opened.plan, ...asked });
    let untold: JudgedMotor[] = [];
    await shortlist(this.judgedBefore.knownFirst(shelf.candidates), opened.plan, {
      ...asked,
      run: this.judgedBefore.over((spec, candidate) => judges.judge(task, spec, candidate)),
      lanes: judges.lanes,
      onRow: (row, done, of) => {
        untold.push(row);
        if (done < of && !this.beat(job, done, of)) return;
        this.options.post({ kind: "rows", job, rows: untold });
        untold = [];
      },
    });
    task.check();
    this.done(job);
  }

  /** Reads a plan and says what is wrong with it; null where that is anything. */
  private async ready(task: Task, job: number, plan: string): Promise<Ready | null> {
    const { revision } = this.cabinet;
    const { issues, files, parts } = await this.cabinet.read(plan);
    task.check();
    const made = parts === undefined ? undefined : planToEngine(parts);
    if (parts === undefined || made === undefined || !made.ok) {
      const all = [...issues, ...(made === undefined || made.ok ? [] : made.issues)];
      this.options.post({ kind: "read", job, issues: all, files, right: false });
      return null;
    }
    const { inputs, context, warnings } = made;
    const others =
      inputs.cutSoFar === undefined ? { rockets: [], files: [] } : await this.cabinet.otherRockets(parts, inputs.air);
    task.check();
    this.options.post({ kind: "read", job, issues, files: [...files, ...others.files], right: true });
    return { revision, inputs, context, doubts: warnings, otherRockets: others.rockets, facts: factsOf(inputs, parts) };
  }

  private async decided(
    task: Task,
    job: number,
    plan: string,
    { revision, inputs, otherRockets }: Ready,
    tellFirst?: (decision: Decision) => void,
  ): Promise<Decision> {
    if (this.last?.plan === plan && this.last.revision === revision) return this.last.decision;
    // searches over weather or ballast fly ensembles of their own, which never count back
    let most = 0;
    const onDone = (done: number): void => {
      most = Math.max(most, done);
      this.beat(job, most, this.draws);
    };
    let drawing: Promise<void> | undefined;
    const onPart = (decision: Decision): Promise<void> => {
      tellFirst?.(decision);
      drawing = this.drawn(task);
      return drawing;
    };
    const run = this.runner(task, { onDone, after: () => drawing });
    const decision = await decide(inputs, {
      draws: this.draws,
      seed: SEED,
      otherRockets,
      run,
      memory: (bytes) => this.memory(bytes),
      pause: () => this.step(task),
      ...(tellFirst === undefined ? {} : { stages: STAGES, onPart }),
    });
    this.last = { plan, revision, decision };
    return decision;
  }

  private memory(bytes: number): ArrayBuffer {
    if (this.gathered.byteLength < bytes) this.gathered = new ArrayBuffer(bytes);
    return this.gathered;
  }

  private runner(task: Task, { onDone, after, aside = false }: RunnerOptions): EnsembleRunner {
    return (spec, from, to, onProgress, into) =>
      this.options.share.fly(task, spec, from, to, {
        into,
        onProgress: (done) => {
          onProgress?.(done - from);
          onDone?.(done);
        },
        after: after?.(),
        aside,
      });
  }

  /** Between two steps of work that is done here alone. */
  private async step(task: Task, beat?: () => void): Promise<void> {
    beat?.();
    await this.options.tick();
    task.check();
  }

  /** Resolves once the page has had the time to draw first odds; rejects as soon as nobody waits for more of them. */
  private drawn(task: Task): Promise<void> {
    return new Promise((resolve, reject) => {
      const off = task.onDrop(() => reject(new Dropped()));
      void this.options.pause(DRAWING).then(() => {
        off();
        resolve();
      });
    });
  }

  private tell(job: number, { inputs, context, doubts, facts }: Ready, decision: Decision, of: number): void {
    const data = decisionData({ decision, inputs, context, doubts });
    const { density } = decision.coast;
    this.options.post({ kind: "told", job, told: { data, density, facts, draws: decision.draws, of } });
  }

  /** Returns whether it was time for one. */
  private beat(job: number, done: number, of: number): boolean {
    const now = this.options.now();
    if (now - this.lastBeat < BEAT) return false;
    this.lastBeat = now;
    this.options.post({ kind: "beat", job, done, of });
    return true;
  }

  private done(job: number): void {
    this.options.post({ kind: "done", job });
  }
}

function reasonOf(error: unknown): string {
  return (error instanceof Error ? error.message : String(error)).slice(0, 300);
}
