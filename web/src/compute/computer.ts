import type { Watch } from "../store/watched.js";
import { briefRules, planRules, type Rules, steadinessRules, windowRules } from "./answers.js";
import { BriefBox, type BriefMemory } from "./brief-box.js";
import type { StartCrew } from "./crew.js";
import { type Changes, DeskCopy, type DocumentSource } from "./desk-copy.js";
import { stoppedWords } from "./failure-words.js";
import { type Every, Foreman } from "./foreman.js";
import { markChange, markFirstOdds, markSettled } from "./marks.js";
import type { Ask, FromDesk } from "./protocol.js";
import { Question } from "./question.js";
import { shortlistRules } from "./shortlist-rules.js";
import {
  type Brief,
  isSettled,
  type PlanAnswer,
  type ShortlistAnswer,
  type SteadinessAnswer,
  type Told,
  type WindowAnswer,
} from "./told.js";

/** What the computer stands on. */
export interface ComputerOptions {
  readonly startCrew: StartCrew;
  readonly documents: DocumentSource;
  readonly memory: BriefMemory;
  /** Names the build, so that answers of another one are not found again; null: it cannot be told. */
  readonly version: string | null;
  readonly every: Every;
}

/**
 * Answers about plans, kept up to date with their documents by a crew of workers.
 *
 * Whatever is watched is asked again as soon as one of its documents changes; the job before is dropped, and what is still
 * heard of it is ignored.
 */
export class Computer {
  private readonly documents: DocumentSource;
  private readonly foreman: Foreman;
  private readonly copy = new DeskCopy();
  private readonly box: BriefBox;
  private readonly questions = new Map<string, Question<unknown>>();
  /** By job: questions that wait for an answer. */
  private readonly open = new Map<number, Question<unknown>>();
  private lastJob = 0;
  private unsubscribe: (() => void) | null = null;

  constructor({ startCrew, documents, memory, version, every }: ComputerOptions) {
    this.documents = documents;
    this.box = new BriefBox(memory, documents, version);
    const events = {
      message: (message: FromDesk) => this.hear(message),
      replaced: () => this.startOver(),
      gaveUp: (deaths: number) => this.fail(stoppedWords(deaths)),
      busy: () => this.open.size > 0,
    };
    this.foreman = new Foreman(startCrew, events, every);
  }

  /** Starts the workers, so that their code is compiled before anything is asked. */
  warmUp(): void {
    this.unsubscribe ??= this.documents.subscribe(() => this.changed());
    if (!this.foreman.start()) return;
    this.copy.forget();
    this.send();
  }

  plan(path: string): Watch<PlanAnswer> {
    return this.question("plan", path, planRules).watch;
  }

  /** Begins with the answer to a question that a page will watch once it is drawn. */
  ahead(ask: "plan" | "brief", plan: string): void {
    const question: Question<unknown> =
      ask === "plan" ? this.question(ask, plan, planRules) : this.question(ask, plan, briefRules);
    if (question.stale && question.job === null) this.begin(question);
  }

  /** Share of the draws of a plan's answer that are flown; null: none are under way. */
  progress(path: string): Watch<number | null> {
    return this.question("plan", path, planRules).progress;
  }

  brief(path: string): Watch<Brief> {
    return this.question("brief", path, briefRules).watch;
  }

  window(path: string): Watch<WindowAnswer> {
    return this.question("window", path, windowRules).watch;
  }

  steadiness(path: string): Watch<SteadinessAnswer> {
    return this.question("steadiness", path, steadinessRules).watch;
  }

  shortlist(path: string): Watch<ShortlistAnswer> {
    return this.question("shortlist", path, shortlistRules).watch;
  }

  /** Share of a shortlist's motors that are judged; null: none are under way. */
  shortlistProgress(path: string): Watch<number | null> {
    return this.question("shortlist", path, shortlistRules).progress;
  }

  /** Ends the workers and forgets the answers. */
  close(): void {
    this.unsubscribe?.();
    this.unsubscribe = null;
    this.foreman.end();
    this.open.clear();
    this.questions.clear();
  }

  private question<Value>(ask: Ask, plan: string, rules: Rules<Value>): Question<Value> {
    const key = keyOf(ask, plan);
    const begin = (question: Question<unknown>) => this.begin(question);
    const left = (question: Question<unknown>) => this.leave(question);
    const made = this.questions.get(key) ?? new Question(ask, plan, rules, begin, left);
    this.questions.set(key, made as Question<unknown>);
    return made as Question<Value>;
  }

  /** Looks for an answer: a brief's in memory first. */
  private begin(question: Question<unknown>): void {
    this.warmUp();
    question.stale = false;
    const turn = ++question.turn;
    if (question.ask !== "brief") {
      this.ask(question);
      if (question.ask === "plan") this.recall(question, turn);
      return;
    }
    void this.box.read(question.plan).then((found) => {
      if (question.turn !== turn || question.job !== null) return;
      if (found !== null) {
        const state = found.files === null ? "waiting" : "settled";
        question.set({ state, issues: [], told: found.told, failure: null } satisfies Brief);
        question.files = found.files;
      }
      if (found === null || found.files === null) this.ask(question);
    });
  }

  /** What the bench shows of a plan, or showed when it was last here, is where the plan's own page begins. */
  private recall(question: Question<unknown>, turn: number): void {
    const answer = () => question.watch.get() as PlanAnswer;
    const begin = (told: Told, files: ReadonlySet<string> | null): void => {
      question.files = files;
      question.known({ ...answer(), told, fresh: true, settling: false } satisfies PlanAnswer);
    };
    if (answer().told !== null) return;
    const brief = this.question("brief", question.plan, briefRules);
    const { state, told } = brief.watch.get();
    if (state === "settled" && told !== null && !brief.stale) {
      begin(told, brief.files);
      return;
    }
    void this.box.read(question.plan).then((found) => {
      const isWanted = question.turn === turn && answer().told === null && answer().issues.length === 0;
      if (isWanted && found?.files != null) begin(found.told, found.files);
    });
  }

  private ask(question: Question<unknown>): void {
    const job = ++this.lastJob;
    question.job = job;
    // until the desk has read the documents, any of them may be one that the answer rests on
    question.files = null;
    this.open.set(job, question);
    question.asked();
    this.foreman.post({ kind: "ask", job, ask: question.ask, plan: question.plan });
  }

  private drop(question: Question<unknown>): void {
    question.turn += 1;
    if (question.job === null) return;
    this.foreman.post({ kind: "drop", job: question.job });
    this.open.delete(question.job);
    question.job = null;
  }

  /** A shortlist is long work for one page alone: it is dropped with the page, and goes on where it was when one comes back. */
  private leave(question: Question<unknown>): void {
    if (!this.copy.has(question.plan)) {
      this.forget(question);
      return;
    }
    if (question.ask !== "shortlist" || question.job === null) return;
    this.drop(question);
    question.stale = true;
  }

  private forget(question: Question<unknown>): void {
    this.drop(question);
    this.questions.delete(keyOf(question.ask, question.plan));
  }

  private hear(message: FromDesk): void {
    const question = this.open.get(message.job);
    if (question === undefined) return;
    if (message.kind === "read") question.files = new Set(message.files);
    if (message.kind === "done" || message.kind === "failed") {
      this.open.delete(message.job);
      question.job = null;
    }
    question.hear(message);
    if (message.kind === "told") this.keep(question, message.told);
  }

  /** A settled answer is what the bench shows of the plan, too. */
  private keep({ ask, plan, watch, files }: Question<unknown>, told: Told): void {
    if (ask === "plan") markFirstOdds();
    if (!isSettled(told)) return;
    if (ask === "plan") markSettled();
    const { issues } = watch.get() as PlanAnswer | Brief;
    if (files === null || issues.length > 0) return;
    this.box.save(plan, files, told);
    if (ask !== "plan") return;
    const brief = this.question("brief", plan, briefRules);
    this.drop(brief);
    brief.files = files;
    brief.stale = false;
    brief.set({ state: "settled", issues: [], told, failure: null });
  }

  /** Sends what changed to the desk. */
  private send(): Changes | null {
    const changes = this.copy.changes(this.documents.entries());
    if (changes !== null) this.foreman.post(changes.message);
    return changes;
  }

  private changed(): void {
    if (this.foreman.start()) this.copy.forget();
    const changes = this.send();
    if (changes === null) return;
    for (const question of [...this.questions.values()]) {
      if (!question.watched && changes.message.remove.includes(question.plan)) {
        this.forget(question);
        continue;
      }
      if (!question.rests(changes)) continue;
      question.stale = true;
      this.drop(question);
      if (!question.watched) continue;
      if (question.ask === "plan") markChange();
      this.begin(question);
    }
  }

  /** Whatever was under way is asked again of the new crew. */
  private startOver(): void {
    this.copy.forget();
    this.send();
    const waiting = [...this.open.values()];
    this.open.clear();
    for (const question of waiting) this.ask(question);
  }

  private fail(words: string): void {
    for (const question of this.open.values()) {
      question.job = null;
      question.stale = true;
      question.fail(words);
    }
    this.open.clear();
  }
}

function keyOf(ask: Ask, plan: string): string {
  return `${ask} ${plan}`;
}
