import { documentSource, keepBrief, readBrief } from "../store/index.js";
import type { Watch } from "../store/watched.js";
import { Aside } from "./aside.js";
import { Computer } from "./computer.js";
import { startCrew, version } from "./crew.js";

/** Documents that are asked about and not kept. */
export const aside = new Aside(documentSource);

let made: Computer | null = null;

/** The one computer of the page. */
export function theComputer(): Computer {
  made ??= new Computer({
    startCrew,
    documents: aside,
    memory: { read: readBrief, save: keepBrief },
    version,
    every(ms, look) {
      const timer = setInterval(look, ms);
      return () => clearInterval(timer);
    },
  });
  return made;
}

/** Starts the workers at once, so that they are ready when the first plan is opened. */
export function warmUp(): void {
  theComputer().warmUp();
}

/**
 * Begins with an answer before the page that shows it is drawn: both take their time, and there is more than one core.
 *
 * @param ask `plan`: for its sheet or the pad; `brief`: for its card on the bench
 */
export function askAhead(ask: "plan" | "brief", plan: string): void {
  theComputer().ahead(ask, plan);
}

/**
 * How far the draws of a plan's answer have come, apart from the answer: it changes many times a second.
 *
 * @param plan path of the plan's document
 * @returns watches the share that is flown, 0…1; null where none are under way
 */
export function progressOf(plan: string): Watch<number | null> {
  return theComputer().progress(plan);
}
