import { type Candidate, type JudgedMotor, judgeMotor, type ShortlistSpec } from "@delaywright/engine";
import type { JudgedByFlyer, ToFlyer } from "../protocol.js";
import { shortRuns } from "./short-runs.js";
import { Dropped, type Task } from "./task.js";

/** Judges the motors of a shortlist, each whole, between the flyers and the desk: some hundred draws are too few to be split. */
export class Judges {
  /** Motors that can be under way at once. */
  readonly lanes: number;
  private readonly tick: () => Promise<void>;
  /** Flyers without a motor. */
  private readonly free: { readonly post: (message: ToFlyer) => void }[];
  private readonly open = new Map<number, (judged: JudgedMotor) => void>();
  private last = 0;

  /** @param tick resolves after the messages that have come were taken */
  constructor(flyers: readonly { readonly post: (message: ToFlyer) => void }[], tick: () => Promise<void>) {
    this.lanes = flyers.length + 1;
    this.free = [...flyers];
    this.tick = tick;
  }

  /** A flyer's answer; one that nobody waits for any more is passed over. */
  hear({ number, judged }: JudgedByFlyer): void {
    this.open.get(number)?.(judged);
  }

  /**
   * Judges a motor, by whoever is free.
   *
   * @throws {Dropped} as soon as the task is dropped
   */
  judge(task: Task, spec: ShortlistSpec, candidate: Candidate): Promise<JudgedMotor> {
    if (task.dropped) return Promise.reject(new Dropped());
    const flyer = this.free.pop();
    if (flyer === undefined) return this.judgeHere(task, spec, candidate);
    const number = ++this.last;
    flyer.post({ kind: "motor", number, spec, candidate });
    return new Promise((resolve, reject) => {
      const end = (): void => {
        this.open.delete(number);
        this.free.push(flyer);
      };
      const off = task.onDrop(() => {
        end();
        flyer.post({ kind: "leave", number });
        reject(new Dropped());
      });
      this.open.set(number, (judged) => {
        off();
        end();
        resolve(judged);
      });
    });
  }

  private async judgeHere(task: Task, spec: ShortlistSpec, candidate: Candidate): Promise<JudgedMotor> {
    const pause = async (): Promise<void> => {
      await this.tick();
      task.check();
    };
    await pause();
    return judgeMotor(spec, candidate, shortRuns(pause));
  }
}
