import { documentSource, keepBrief, readBrief } from "../store/index.js";
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
