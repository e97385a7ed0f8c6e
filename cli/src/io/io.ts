import type { FileSource } from "@delaywright/documents";
import type { EnsembleRunner, MotorRunner } from "@delaywright/engine";

/** Files as the commands see them: a disk, or memory in tests. */
export interface Files extends FileSource {
  /** Names of the files in a folder, sorted; none where it cannot be read. */
  list(folder: string): Promise<readonly string[]>;
  /** Reads a whole file that may be larger than a document: an altimeter's record. */
  readRecord(path: string): ReturnType<FileSource["read"]>;
}

/** Shows how far a long run has come. */
export interface Progress {
  /** @param what is counted; left out: flights */
  update(done: number, total: number, what?: string): void;
  end(): void;
}

/** Workers that fly draws side by side, or judge whole motors. */
export interface Pool {
  readonly run: EnsembleRunner;
  /** As many motors at once as there are workers; more than that wait. */
  readonly judge: MotorRunner;
  close(): Promise<void>;
}

/** The bench app being served, or why it is not. */
export type ServedApp =
  | { readonly ok: true; readonly port: number; readonly ended: Promise<void> }
  | { readonly ok: false; readonly reason: string };

/** Everything outside that a command touches. */
export interface Io {
  /** Standard output. */
  out(text: string): void;
  /** Standard error. */
  err(text: string): void;
  readonly files: Files;
  /** Colours are wanted on standard output. */
  readonly colour: boolean;
  readonly progress: Progress;
  /** Processor cores of this machine. */
  readonly cores: number;
  /** The day and time. */
  now(): Date;
  /**
   * Writes a whole file: who reads it meanwhile sees the old one or the new one, never half.
   *
   * @returns null, or why it was not written
   */
  write(path: string, text: string): Promise<string | null>;
  openPool(workers: number): Promise<Pool>;
  /** Serves the bench app from `port` on, or on that port only, until the process is interrupted. */
  serveApp(port: number, onlyThis: boolean): Promise<ServedApp>;
}

/** Exit codes of every command. */
export const EXIT = Object.freeze({ done: 0, defect: 1, wrongInput: 2, notGoodEnough: 3 });
