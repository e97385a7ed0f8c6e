import type { PrepAct, PrepBasis, PrepEvent, PrepFacts, PrepState, PrepStepId } from "../src/index.js";
import { misfireFlight, prepState, scrubFlight, signStep, unsignStep } from "../src/index.js";

const basis: Readonly<Record<PrepBasis, string>> = {
  motor: "H150-14",
  bag: "3",
  removed: "0",
  setting: "9",
  charge: "1 g",
  bay: "72 x 250",
  recovery: "1.1 m",
  rocket: "1.95 kg",
  guide: "1.67 m",
  weather: "2 m/s",
  place: "Larkmoor",
};

/** The simplest sheet: a fixed delay, the motor's own charge, no electronics. */
export const plainFacts: PrepFacts = {
  delay: "fixed",
  cut: "none",
  electronics: false,
  ownCharge: false,
  shearPins: false,
  drogue: false,
  checkSaysStop: false,
  basis,
};

/** The longest sheet: a delay whose cut was read, and every charge, pin and canopy there is. */
export const fullFacts: PrepFacts = {
  ...plainFacts,
  delay: "adjustable",
  cut: "made",
  electronics: true,
  ownCharge: true,
  shearPins: true,
  drogue: true,
};

/** One hand with a clock that goes on between acts. */
export class Bench {
  events: readonly PrepEvent[] = [];
  facts: PrepFacts;
  seconds = 0;
  constructor(facts: PrepFacts) {
    this.facts = facts;
  }
  private seen: { facts: PrepFacts; events: readonly PrepEvent[]; state: PrepState } | undefined;
  get state(): PrepState {
    const { facts, events, seen } = this;
    if (seen?.facts === facts && seen.events === events) return seen.state;
    const state = prepState(facts, events);
    this.seen = { facts, events, state };
    return state;
  }
  get signed(): PrepStepId[] {
    return this.state.steps.filter(({ status }) => status === "signed").map(({ step }) => step.id);
  }
  status(id: PrepStepId) {
    return this.state.steps.find(({ step }) => step.id === id);
  }
  private keep(act: PrepAct): PrepAct {
    if (act.ok) this.events = [...this.events, act.event];
    return act;
  }
  private get hand() {
    return { by: "AB", when: `second ${this.seconds}`, at: this.seconds };
  }
  wait(seconds: number): void {
    this.seconds += seconds;
  }
  sign(id: PrepStepId): PrepAct {
    return this.keep(signStep(this.facts, this.events, id, this.hand));
  }
  unsign(id: PrepStepId): PrepAct {
    return this.keep(unsignStep(this.facts, this.events, id, { ...this.hand, reason: "a slip" }));
  }
  scrub(): PrepAct {
    return this.keep(scrubFlight(this.facts, this.events, { ...this.hand, reason: "rain" }));
  }
  misfire(): PrepAct {
    return this.keep(misfireFlight(this.facts, this.events, { ...this.hand, reason: "no smoke" }));
  }
  /** Signs one after the other what is next, until a step is signed; every wait is waited for. */
  until(last: PrepStepId): this {
    for (let i = 0; i < 100 && this.status(last)?.status !== "signed"; i++) {
      const { next } = this.state;
      if (next === null) throw new Error(`nothing to sign before ${last}`);
      this.wait(61);
      if (!this.sign(next).ok) throw new Error(`${next} was refused`);
    }
    return this;
  }
  change(what: PrepBasis, to: string): void {
    this.facts = { ...this.facts, basis: { ...this.facts.basis, [what]: to } };
  }
}
