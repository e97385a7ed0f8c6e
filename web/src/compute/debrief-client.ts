import type { Issue, LogMapping } from "@delaywright/documents";
import { type Incoming, type ReadFiles, readIncoming, withFolders } from "../store/read-incoming.js";
import type {
  DebriefAsk,
  DebriefTold,
  FlightLibrary,
  FlownLines,
  FromDebrief,
  LogFile,
  PackedLog,
  Previewed,
  StretchAsk,
  ToDebrief,
} from "./debrief/protocol.js";

/** A worker as its client sees it. */
export interface DebriefPort {
  post(message: ToDebrief): void;
  end(): void;
}

export interface DebriefPortEvents {
  message(message: FromDebrief): void;
  died(reason: string): void;
}

/** What a debrief says as it goes on. */
export interface DebriefListener {
  told(told: DebriefTold): void;
  /** Nothing follows. */
  wrong(issues: readonly Issue[]): void;
  failed(reason: string): void;
}

type Listener = (message: FromDebrief) => void;

/** Asks a worker of its own for what a log holds and what its flight says. Started with the first question, again after a defect. */
export class DebriefClient {
  private readonly start: (events: DebriefPortEvents) => DebriefPort;
  private readonly waiting = new Map<number, Listener>();
  private port: DebriefPort | null = null;
  private last = 0;
  private file: string | null = null;

  constructor(start: (events: DebriefPortEvents) => DebriefPort) {
    this.start = start;
  }

  /** The file that is open in the worker; null: none. */
  get opened(): string | null {
    return this.file;
  }

  /** Opens a file in place of the one before; null: it cannot be unpacked. */
  async open(name: string, file: LogFile): Promise<Previewed | null> {
    this.file = null;
    const { previewed } = await this.ask({ kind: "open", file }, "opened");
    this.file = previewed === null ? null : name;
    return previewed;
  }

  /** The open file as it is kept. */
  async pack(name: string): Promise<PackedLog> {
    if (this.file === null) throw new Error("it has to be chosen again");
    return (await this.ask({ kind: "pack", name }, "packed")).packed;
  }

  /** The open file has this name from now on. */
  rename(file: string): void {
    if (this.file !== null) this.file = file;
  }

  /** What the open file holds under a mapping; null: as guessed. */
  async preview(mapping: LogMapping | null): Promise<Previewed> {
    return (await this.ask({ kind: "preview", mapping }, "previewed")).previewed;
  }

  /** All flights, and how the odds held that they were given. */
  async library(documents: DebriefAsk["documents"]): Promise<FlightLibrary> {
    return (await this.ask({ kind: "library", documents }, "library")).library;
  }

  /** A stretch of the flight that was debriefed last; null: there is none. */
  async stretch(ask: StretchAsk): Promise<FlownLines | null> {
    return (await this.ask({ kind: "stretch", ask }, "lines")).lines;
  }

  /** What files hold that are to be taken in. Where no worker runs they are read here: an import must not hang on that. */
  async incoming(files: readonly Incoming[]): Promise<ReadFiles> {
    try {
      return (await this.ask({ kind: "incoming", files: withFolders(files) }, "incoming")).read;
    } catch {
      return readIncoming(files);
    }
  }

  /** Debriefs a flight; returns a function after which nothing more is heard. */
  debrief(ask: DebriefAsk, listener: DebriefListener): () => void {
    const job = this.send({ kind: "debrief", ask }, (message) => {
      if (message.kind === "told") {
        listener.told(message.told);
        if (message.told.settled) this.waiting.delete(job);
        return;
      }
      this.waiting.delete(job);
      if (message.kind === "wrong") listener.wrong(message.issues);
      if (message.kind === "failed") listener.failed(message.reason);
    });
    return () => this.waiting.delete(job);
  }

  private ask<Kind extends FromDebrief["kind"]>(
    message: Unnumbered,
    kind: Kind,
  ): Promise<Extract<FromDebrief, { kind: Kind }>> {
    return new Promise((resolve, reject) => {
      const job = this.send(message, (answer) => {
        this.waiting.delete(job);
        if (answer.kind === kind) resolve(answer as Extract<FromDebrief, { kind: Kind }>);
        else reject(new Error(answer.kind === "failed" ? answer.reason : answer.kind));
      });
    });
  }

  private send(message: Unnumbered, listener: Listener): number {
    this.port ??= this.start({
      message: (answer) => this.waiting.get(answer.job)?.(answer),
      died: (reason) => this.died(reason),
    });
    this.last += 1;
    const job = this.last;
    this.waiting.set(job, listener);
    this.port.post({ ...message, job } as ToDebrief);
    return job;
  }

  /** Whoever waits is told; the next question starts another worker, which has no file open. */
  private died(reason: string): void {
    this.port?.end();
    this.port = null;
    this.file = null;
    const waiting = [...this.waiting];
    this.waiting.clear();
    for (const [job, listener] of waiting) listener({ kind: "failed", job, reason });
  }
}

type Without<Message> = Message extends unknown ? Omit<Message, "job"> : never;
type Unnumbered = Without<ToDebrief>;

function startWorker(events: DebriefPortEvents): DebriefPort {
  const worker = new Worker(new URL("./debrief.worker.ts", import.meta.url), { type: "module" });
  worker.onmessage = ({ data }: MessageEvent<FromDebrief>) => events.message(data);
  worker.onmessageerror = () => events.died("a message could not be read");
  worker.onerror = (event) => {
    event.preventDefault();
    events.died(event.message);
  };
  return {
    post: (message) => worker.postMessage(message),
    end: () => worker.terminate(),
  };
}

/** The page's one debrief worker. */
export const debriefClient = new DebriefClient(startWorker);
