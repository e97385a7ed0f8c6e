import type { PastOdds } from "@delaywright/engine";
import type { PastFlight } from "./past-flight.js";

/** What a past flight was given and how it came in; undefined where one of them is not known, or it is left out. */
export function pastOdds({ data }: PastFlight): PastOdds | undefined {
  const { odds, outcome, top, topBand, excluded } = data;
  if (odds === null || outcome === null || excluded !== null) return undefined;
  return {
    odds,
    clean: outcome === "clean",
    ...(top === null || topBand === null ? {} : { top, topBand }),
  };
}
