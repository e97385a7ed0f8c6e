import type { RecordFlaw } from "@delaywright/engine";
import type { DebriefData, RecordData } from "../answer/debrief-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { amount, decimals, figureWords, glued } from "./numbers.en.js";

/** What the record is worth: its rate, and the noise of its heights. */
export function recordSentence(
  { file, rows, rate, heightError, accelerationError }: RecordData,
  units: UnitSystem = "metric",
): string {
  const beside = accelerationError === null ? "no accelerometer" : "an accelerometer beside";
  const often = decimals(rate, rate < 9.95 ? 1 : 0);
  return `${file}: ${rows} samples of this flight, ${often} a second; a height is good to ${figureWords(heightError, "distance", units, 1, 0)} (one sigma), ${beside}.`;
}

const flaws: Readonly<Record<RecordFlaw["kind"], readonly [one: string, many: string, meaning: string]>> =
  Object.freeze({
    gap: ["gap", "gaps", "nothing is known there"],
    spike: ["spike", "spikes", "left out and bridged"],
    saturated: [
      "stretch at the end of its range",
      "stretches at the end of its range",
      "the accelerometer tells no more there",
    ],
    restart: ["restart", "restarts", "the clock was taken up again"],
    "not-a-number": ["stretch without figures", "stretches without figures", "bridged"],
  });

/** What is wrong with a record, a sentence a kind: `2 gaps, 1.3 s in all: nothing is known there.` */
export function flawSentences({ flaws: all }: Pick<RecordData, "flaws">): string[] {
  return (Object.keys(flaws) as RecordFlaw["kind"][]).flatMap((kind) => {
    const found = all.filter((flaw) => flaw.kind === kind);
    if (found.length === 0) return [];
    const [one, many, meaning] = flaws[kind];
    const seconds = found.reduce((sum, { from, to }) => sum + to - from, 0);
    return [
      `${glued(String(found.length), found.length === 1 ? one : many)}, ${amount(seconds, "s", seconds < 0.95 ? 2 : 1)} in all: ${meaning}.`,
    ];
  });
}

/** What to know of how a flight was read. */
export function noteSentences({ notes, flight }: Pick<DebriefData, "notes" | "flight">): string[] {
  const words = {
    "several-flights": `The record holds ${flight.of ?? 0} flights; this is number ${flight.number ?? 0}. Another may be asked for.`,
    "opened-before-top":
      "It opened before the top: the top that it would have had was not seen, so neither coast nor band is judged.",
    "climb-not-fitted": "The climb could not be fitted: drag and impulse stay unknown.",
    "outcome-stated": "How it came in is your own word.",
    "findings-only": "There is no record: what was written down is all that is left.",
    "plan-learned-more":
      "The plan reckons with more flights than were given here: give the folder of all flights, else they are forgotten in what follows.",
  } as const;
  return notes.map((note) => words[note]);
}
