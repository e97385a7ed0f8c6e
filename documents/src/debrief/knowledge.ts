import { type Learned, learnedDelayAt, normalQuantile, type Spread, studentQuantile } from "@delaywright/engine";
import type { KnowledgeData } from "../answer/debrief-data.js";
import { factorData } from "../answer/factor-data.js";

/**
 * A state of knowledge in factors and ranges.
 *
 * @param set the delay at which its range is told [s]; null: none is
 * @param prior scatter of the delay that stands while none was seen
 */
export function knowledge(learned: Learned, set: number | null, prior: Spread["delay"]): KnowledgeData {
  const { drag, impulse, correlation, flights } = learned;
  return {
    drag: factorData(drag.mean, drag.sd),
    impulse: factorData(impulse.mean, impulse.sd),
    correlation,
    delay: set === null ? null : delayRange(learned, set, prior),
    flights,
  };
}

function delayRange({ delay }: Learned, set: number, prior: Spread["delay"]): NonNullable<KnowledgeData["delay"]> {
  if (delay === undefined) {
    const half = normalQuantile(0.95) * Math.max(prior.seconds, prior.fraction * set);
    return { set, mean: set, low: set - half, high: set + half };
  }
  const { mean, sd, degrees } = learnedDelayAt(delay, set);
  // the Student-t has a greater variance than its scale
  const half = studentQuantile(0.95, degrees) * sd * Math.sqrt((degrees - 2) / degrees);
  return { set, mean, low: mean - half, high: mean + half };
}
