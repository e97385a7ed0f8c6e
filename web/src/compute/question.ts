import { type Watch, Watched } from "../store/watched.js";
import type { Rules } from "./answers.js";
import type { Changes } from "./desk-copy.js";
import type { Ask, FromDesk } from "./protocol.js";
import { isSettled, type Told } from "./told.js";

/** One question about one plan, with its newest answer. */
export class Question<Value> {
  readonly ask: Ask;
  readonly plan: string;
  readonly watch: Watch<Value>;
  /** The job under way; null: none. */
  job: number | null = null;
  /** The documents changed since it was last answered. */
  stale = true;
  /** Counts how often the answer was looked for: what was found for an earlier turn no longer matters. */
  turn = 0;
  /** Documents that the answer rests on; null: not known. */
  files: ReadonlySet<string> | null = null;
  /** Share of the draws that are flown, 0…1; null: none are under way. */
  readonly progress: Watch<number | null>;
  private readonly subject: Watched<Value>;
  private readonly share = new Watched<number | null>(null);
  private readonly rules: Rules<Value>;

  /**
   * @param begin looks for the answer; called when somebody begins to watch what is stale
   * @param left called when nobody watches any more
   */
  constructor(
    ask: Ask,
    plan: string,
    rules: Rules<Value>,
    begin: (question: Question<Value>) => void,
    left: (question: Question<Value>) => void,
  ) {
    this.ask = ask;
    this.plan = plan;
    this.rules = rules;
    this.subject = new Watched<Value>(rules.first);
    const subscribe = (listener: () => void): (() => void) => {
      const end = this.subject.subscribe(listener);
      if (this.stale && this.job === null) begin(this);
      return () => {
        end();
        if (!this.watched) left(this);
      };
    };
    this.watch = { get: this.subject.get, subscribe };
    this.progress = { get: this.share.get, subscribe: this.share.subscribe };
  }

  get watched(): boolean {
    return this.subject.watched;
  }

  set(value: Value): void {
    this.subject.set(value);
  }

  /** Begins with an answer that is known already, while the desk is asked for the rest of it. */
  known(value: Value): void {
    this.share.set(null);
    this.subject.set(value);
  }

  asked(): void {
    this.share.set(0);
    this.subject.set(this.rules.asked(this.subject.get()));
  }

  hear(message: FromDesk): void {
    if (message.kind === "beat") {
      const share = this.share.get();
      if (share !== null) this.share.set(Math.max(share, message.done / message.of));
      return;
    }
    const over =
      message.kind === "told" ? isSettled(message.told) : message.kind === "done" || message.kind === "failed";
    if (over) this.share.set(null);
    this.subject.set(this.rules.after(this.subject.get(), message));
  }

  fail(words: string): void {
    this.share.set(null);
    this.subject.set(this.rules.failed(this.subject.get(), words));
  }

  /** May the answer have changed with the documents? */
  rests({ paths, rockets, motors }: Changes): boolean {
    if (this.files === null) return true;
    if (motors && this.ask === "shortlist") return true;
    // a shortened element may suit any other rocket
    if (rockets && overCut(this.subject.get() as { readonly told?: Told | null })) return true;
    for (const path of paths) if (this.files.has(path)) return true;
    return false;
  }
}

function overCut({ told }: { readonly told?: Told | null }): boolean {
  return told != null && told.data.overCut !== null;
}
