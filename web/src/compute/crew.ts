import type { FromDesk, Held, HiredDesk, HiredFlyer, ToDesk } from "./protocol.js";
import { takeWorkers } from "./spawned.js";

/** The workers as the page sees them: one desk, which has the others to itself. */
export interface Crew {
  post(message: ToDesk): void;
  /** Ends all workers; nothing is heard of them afterwards. */
  end(): void;
}

/** What is heard of a crew. */
export interface CrewEvents {
  message(message: FromDesk): void;
  /** A worker failed, was ended, or could not start. */
  died(reason: string): void;
}

export type StartCrew = (events: CrewEvents) => Crew;

/**
 * Names this build: the file's name carries a hash of what is in it, and the worker's name with its own hash is in it.
 * Null while developing, where names stay as they are.
 */
export const version: string | null = import.meta.env.DEV ? null : (import.meta.url.split("/").at(-1) ?? null);

/** Starts one worker for each core, up to four. */
export const startCrew: StartCrew = (events) => {
  const ending = new AbortController();
  const died = (reason: string): void => {
    if (!ending.signal.aborted) events.died(reason);
  };
  const { desk, flyers } = takeWorkers();
  const hire = (
    worker: Worker,
    hired: HiredDesk<MessagePort> | HiredFlyer<MessagePort>,
    ports: MessagePort[],
  ): void => {
    worker.onerror = (event) => {
      event.preventDefault();
      died(event.message);
    };
    worker.onmessageerror = () => died("a message could not be read");
    worker.onmessage = ({ data }: MessageEvent<FromDesk | Held>) => {
      if (ending.signal.aborted) return;
      if (data.kind === "held") watch(hired.lock, ending.signal, died);
      else events.message(data);
    };
    worker.postMessage(hired, ports);
  };
  const channels = flyers.map((worker) => {
    const { port1, port2 } = new MessageChannel();
    hire(worker, { desk: port1, lock: lockName() }, [port1]);
    return port2;
  });
  hire(desk, { kind: "hired", flyers: channels, lock: lockName() }, channels);
  return {
    post: (message) => desk.postMessage(message),
    end() {
      ending.abort();
      for (const worker of [desk, ...flyers]) worker.terminate();
    },
  };
};

/** A name that no other worker of this origin has; null where there are no locks. */
function lockName(): string | null {
  return "locks" in navigator && "randomUUID" in crypto ? `delaywright-worker-${crypto.randomUUID()}` : null;
}

/** Waits for a lock that its worker holds: it comes free when the worker ends, however that happens. */
function watch(lock: string | null, signal: AbortSignal, died: (reason: string) => void): void {
  if (lock === null) return;
  navigator.locks.request(lock, { signal }, () => died("a worker was ended")).catch(() => undefined);
}
