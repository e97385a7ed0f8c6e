import { documentSource, keepBrief, readBrief } from "../store/index.js";
import { Computer } from "./computer.js";
import { startCrew, version } from "./crew.js";

let made: Computer | null = null;

/** The one computer of the page. */
export function theComputer(): Computer {
  made ??= new Computer({
    startCrew,
    documents: documentSource,
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
