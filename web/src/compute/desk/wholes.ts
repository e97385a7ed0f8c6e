import type { EnsembleChunk, EnsembleSpec } from "@delaywright/engine";
import type { FlownWhole, ToFlyer } from "../protocol.js";
import { Dropped, type Task } from "./task.js";

/** Gives ensembles that are too short to be split to the flyers in turn: the desk gets on with what only it can do. */
export class Wholes {
  private readonly flyers: readonly { readonly post: (message: ToFlyer) => void }[];
  private readonly open = new Map<number, (chunk: EnsembleChunk) => void>();
  private last = 0;

  constructor(flyers: readonly { readonly post: (message: ToFlyer) => void }[]) {
    this.flyers = flyers;
  }

  /** Is there anybody to fly them? */
  get any(): boolean {
    return this.flyers.length > 0;
  }

  /** A flyer's answer; one that nobody waits for any more is passed over. */
  hear({ whole, chunk }: FlownWhole): void {
    this.open.get(whole)?.(chunk);
  }

  /**
   * Flies draws `from` … `to` − 1 of an ensemble on one flyer.
   *
   * @throws {Dropped} as soon as the task is dropped
   */
  fly(task: Task, spec: EnsembleSpec, from: number, to: number): Promise<EnsembleChunk> {
    const whole = ++this.last;
    this.flyers[whole % this.flyers.length]?.post({ kind: "whole", whole, spec, from, to });
    return new Promise((resolve, reject) => {
      const off = task.onDrop(() => {
        this.open.delete(whole);
        reject(new Dropped());
      });
      this.open.set(whole, (chunk) => {
        off();
        this.open.delete(whole);
        resolve(chunk);
      });
    });
  }
}
