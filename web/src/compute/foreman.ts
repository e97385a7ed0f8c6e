import type { Crew, StartCrew } from "./crew.js";
import type { FromDesk, ToDesk } from "./protocol.js";

/** How often the crew is looked after, and after how many silent looks at work it counts as hung [ms]. */
const LOOK = 1000;
const SILENT_LOOKS = 20;

/** Crews in a row that are replaced; the one after them is not. */
const MOST_REPLACED = 3;

/** What the foreman tells. */
export interface ForemanEvents {
  message(message: FromDesk): void;
  /** A new crew stands in for one that died: it knows nothing yet. */
  replaced(): void;
  /** Too many died in a row: no crew until `start`. */
  gaveUp(deaths: number): void;
  /** Is anybody waiting for an answer? */
  busy(): boolean;
}

/** Calls a function again and again; returns a function that ends it. */
export type Every = (ms: number, look: () => void) => () => void;

/** Keeps a crew at work: one that died or hangs is replaced, but not for ever. */
export class Foreman {
  private readonly startCrew: StartCrew;
  private readonly events: ForemanEvents;
  private readonly every: Every;
  private crew: Crew | null = null;
  private stopLooking: () => void = () => undefined;
  private deaths = 0;
  private silent = 0;

  constructor(startCrew: StartCrew, events: ForemanEvents, every: Every) {
    this.startCrew = startCrew;
    this.events = events;
    this.every = every;
  }

  /** Starts a crew where there is none. Returns whether it did. */
  start(): boolean {
    if (this.crew !== null) return false;
    this.deaths = 0;
    this.hire();
    return true;
  }

  post(message: ToDesk): void {
    this.crew?.post(message);
  }

  end(): void {
    this.stopLooking();
    this.crew?.end();
    this.crew = null;
  }

  private hire(): void {
    this.silent = 0;
    // a death may come late, of a crew that was replaced already
    const crew: { current: Crew | null } = { current: null };
    const mine = (): boolean => crew.current !== null && crew.current === this.crew;
    crew.current = this.startCrew({
      message: (message) => {
        if (!mine()) return;
        this.silent = 0;
        if (message.kind === "done") this.deaths = 0;
        this.events.message(message);
      },
      died: () => {
        if (mine()) this.mourn();
      },
    });
    this.crew = crew.current;
    this.stopLooking = this.every(LOOK, () => {
      this.silent = this.events.busy() ? this.silent + 1 : 0;
      if (this.silent >= SILENT_LOOKS) this.mourn();
    });
  }

  private mourn(): void {
    this.end();
    this.deaths += 1;
    if (this.deaths > MOST_REPLACED) {
      this.events.gaveUp(this.deaths);
      return;
    }
    this.hire();
    this.events.replaced();
  }
}
