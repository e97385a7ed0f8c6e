import { Dropped, Task } from "./task.js";
import { goesBefore, takeNext, type Work } from "./work.js";

/**
 * One piece of work after the other, the most urgent first.
 *
 * Something more urgent drops what is under way, which then starts again after it.
 */
export class Line {
  private readonly failed: (work: Work, error: unknown) => void;
  private readonly waiting: Work[] = [];
  private current: { readonly work: Work; readonly task: Task; again: boolean } | null = null;
  private busy = false;

  /** @param failed hears of work that threw */
  constructor(failed: (work: Work, error: unknown) => void) {
    this.failed = failed;
  }

  add(work: Work): void {
    this.waiting.push(work);
    const { current } = this;
    if (current !== null && !current.task.dropped && goesBefore(work, current.work)) {
      current.again = true;
      current.task.drop();
    }
    if (!this.busy) void this.go();
  }

  /** Drops whatever belongs to a job. */
  drop(job: number): void {
    for (let i = this.waiting.length - 1; i >= 0; i--) if (this.waiting[i]!.job === job) this.waiting.splice(i, 1);
    if (this.current?.work.job !== job) return;
    this.current.again = false;
    this.current.task.drop();
  }

  private async go(): Promise<void> {
    this.busy = true;
    for (let work = takeNext(this.waiting); work !== undefined; work = takeNext(this.waiting)) {
      const current = { work, task: new Task(), again: false };
      this.current = current;
      try {
        await work.run(current.task);
      } catch (error) {
        if (!(error instanceof Dropped)) this.failed(work, error);
        else if (current.again) this.waiting.unshift(work);
      }
      this.current = null;
    }
    this.busy = false;
  }
}
