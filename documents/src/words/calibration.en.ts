import type { Calibration } from "@delaywright/engine";
import { decimals, glued } from "./numbers.en.js";

/** Fewer flights than this prove little. */
const FEW = 20;

const whole = (share: number): string => String(Math.round(100 * share));

/** An interval of a share: `60 to 98 %`. */
function intervalWords([low, high]: readonly [number, number]): string {
  return `${whole(low)} to ${glued(whole(high), "%")}`;
}

function littleWords(flights: number): string {
  return flights < FEW ? ` ${flights} flights prove little.` : "";
}

/** How the odds that were given held against what came; what to say where there is none yet. */
export function calibrationSentence({ all }: Pick<Calibration, "all">): string {
  const { flights, times, given, interval } = all;
  if (flights === 0 || given === null)
    return "No past flight has both odds and an outcome: nothing says yet how far the odds can be relied on.";
  if (flights === 1)
    return `The one flight that was given odds, ${glued(whole(given), "%")}, ${times === 1 ? "came" : "did not come"} clean. One flight proves nothing.`;
  return `Of ${flights} flights that were given odds, ${times} came clean, where ${decimals(given * flights, 1)} were to be expected; with 95 % confidence ${intervalWords(interval)} come clean in the long run.${littleWords(flights)}`;
}

/** How many tops lay inside the band that should hold nine in ten; null where none was foretold. */
export function topsSentence({ tops }: Pick<Calibration, "tops">): string | null {
  const { flights, times, interval } = tops;
  if (flights === 0) return null;
  return `${times} of ${flights} ${flights === 1 ? "top" : "tops"} lay inside the band that should hold ${glued("9", "in", "10")}; with 95 % confidence it holds ${intervalWords(interval)}.`;
}

/** A bin of odds for a table: `80 to 90 %`. */
export function binWords({ from, to }: Calibration["bins"][number]): string {
  return intervalWords([from, to]);
}
