import { delayTells, learnDelay } from "./delays.js";
import type { Learned, TaughtFlight } from "./learned.js";
import type { LearningPriors } from "./priors.js";
import { climbTells, learnScales } from "./scales.js";

/**
 * What past flights teach of one rocket on one motor type.
 *
 * With no flight that teaches anything it says what the priors say. The order of the flights does not matter, but for the last
 * digits, and a little where several delays are bounds.
 *
 * @param flights that are not excluded
 * @param of keys of rocket, motor type and lot as the flights have them; a lot that is null is not known
 * @param priors one sigma of each: the plan's spread fits
 * @example
 * const learned = learn(flights, { rocket: "a", motor: "h150", lot: null }, inputs.spread);
 * const odds = await decide(withLearned(inputs, learned));
 */
export function learn(
  flights: readonly TaughtFlight[],
  of: { readonly rocket: string; readonly motor: string; readonly lot: string | null },
  priors: LearningPriors,
): Learned {
  const delay = learnDelay(flights, of.motor, of.lot, priors.delay);
  const ofRocket = flights.filter((flight) => flight.rocket === of.rocket && climbTells(flight));
  const ofMotor = flights.filter((flight) => flight.motor === of.motor && (climbTells(flight) || delayTells(flight)));
  return {
    ...learnScales(flights, of, priors),
    ...(delay === undefined ? {} : { delay }),
    flights: {
      rocket: ofRocket.length,
      motor: ofMotor.length,
      both: ofMotor.filter(({ rocket }) => rocket === of.rocket).length,
    },
  };
}
