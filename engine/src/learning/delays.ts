import type { Spread } from "../spread/spread.js";
import { boundedBy } from "./bounded.js";
import type { LearnedDelay, TaughtFlight } from "./learned.js";
import { delaySharesAt, variancePrior } from "./priors.js";

/** A flight whose set delay is known, and something of the flown one. */
interface TaughtDelay {
  readonly lot: string | null;
  readonly set: number;
  readonly setError?: number;
  readonly flown: Exclude<TaughtFlight["flown"], { kind: "unknown" }>;
}

/** Does the flight tell anything of its delay? */
export function delayTells({ set, flown }: TaughtFlight): boolean {
  if (set === null || !Number.isFinite(set) || set < 0 || flown.kind === "unknown") return false;
  return Number.isFinite(flown.delay) && (flown.kind !== "seen" || (Number.isFinite(flown.error) && flown.error >= 0));
}

/** Posterior of [offset, rate − 1, each lot's own share], all times one factor on the variance. */
class DelayState {
  readonly mean: number[] = [];
  /** Covariance over the factor. */
  readonly covariance: number[][] = [];
  alpha: number = variancePrior.alpha;
  beta: number = variancePrior.beta;

  constructor(variances: readonly number[]) {
    variances.forEach((variance, i) => {
      this.mean.push(0);
      this.covariance.push(variances.map((_, j) => (i === j ? variance : 0)));
    });
  }

  /** Covariance of the state with a combination of it. */
  private across(weights: readonly number[]): number[] {
    return this.covariance.map((row) => row.reduce((sum, value, j) => sum + value * weights[j]!, 0));
  }

  private along(weights: readonly number[], values: readonly number[]): number {
    return weights.reduce((sum, weight, i) => sum + weight * values[i]!, 0);
  }

  /** Moves a combination of the state to a new mean and variance, and the rest of it with it. */
  private move(across: readonly number[], variance: number, by: number, left: number): void {
    if (!(variance > 0)) return;
    for (let i = 0; i < this.mean.length; i++) {
      const slope = across[i]! / variance;
      this.mean[i]! += slope * by;
      for (let j = 0; j < this.mean.length; j++) this.covariance[i]![j]! -= slope * across[j]! * (1 - left / variance);
    }
  }

  /** Takes in Σ weight · state as seen, with the variance of its error over the factor. */
  see(weights: readonly number[], value: number, noise: number): void {
    const across = this.across(weights);
    const variance = this.along(weights, across);
    const off = value - this.along(weights, this.mean);
    const whole = variance + noise;
    if (!(whole > 0)) return;
    this.move(across, variance, (variance / whole) * off, (variance * noise) / whole);
    this.alpha += 0.5;
    this.beta += (0.5 * off * off) / whole;
  }

  /** Takes in that Σ weight · state with such an error is at least (1) or at most (−1) a bound. */
  bound(weights: readonly number[], bound: number, noise: number, side: 1 | -1): void {
    const across = this.across(weights);
    const variance = this.along(weights, across);
    const mean = this.along(weights, this.mean);
    const after = boundedBy({ mean, variance, alpha: this.alpha, beta: this.beta }, noise, bound, side);
    this.move(across, variance, after.mean - mean, after.variance);
    this.alpha = after.alpha;
    this.beta = after.beta;
  }
}

/**
 * What the flights of one motor type teach of its delay.
 *
 * flown = set + offset + (rate − 1) · set + the lot's own share + the motor's own, every variance times one unknown factor. Delays
 * that were seen update it exactly (normal-inverse-gamma); the errors of seeing and of setting count with the motor's own scatter. Then bounds
 * enter one after the other, each by matching moments (`boundedBy`). A flight whose lot is not known counts as a lot of its own.
 *
 * @param lot of the motor in hand; null: not known
 * @returns undefined where no delay of the type was seen or bounded, or the prior leaves nothing to learn
 * @source conjugate updating of a normal regression; for example A. Gelman et al., Bayesian Data Analysis, 14 (memory)
 */
export function learnDelay(
  flights: readonly TaughtFlight[],
  motor: string,
  lot: string | null,
  prior: Spread["delay"],
): LearnedDelay | undefined {
  const taught = flights.filter((flight) => flight.motor === motor && delayTells(flight)) as unknown as TaughtDelay[];
  if (taught.length === 0 || !(prior.seconds > 0 || prior.fraction > 0)) return undefined;
  const lots = [...new Set([lot, ...taught.map((flight) => flight.lot)])].filter((each) => each !== null);
  const { offset, rate } = delaySharesAt(prior, 0);
  const state = new DelayState([offset ** 2, rate ** 2, ...lots.map(() => 1)]);
  const rowOf = (flight: TaughtDelay) => {
    const shares = delaySharesAt(prior, flight.set);
    return {
      weights: [1, flight.set, ...lots.map((each) => (each === flight.lot ? shares.lot : 0))],
      noise: shares.motor + (flight.lot === null ? shares.lot ** 2 : 0) + (flight.setError ?? 0) ** 2,
    };
  };
  for (const flight of taught) {
    if (flight.flown.kind !== "seen") continue;
    const { weights, noise } = rowOf(flight);
    state.see(weights, flight.flown.delay - flight.set, noise + flight.flown.error ** 2);
  }
  for (const flight of taught) {
    if (flight.flown.kind === "seen") continue;
    const { weights, noise } = rowOf(flight);
    state.bound(weights, flight.flown.delay - flight.set, noise, flight.flown.kind === "at-least" ? 1 : -1);
  }
  const factor = state.beta / state.alpha;
  const own = lot === null ? -1 : 2 + lots.indexOf(lot);
  const places = [0, 1, own];
  const entry = (i: number, j: number): number => (i >= 0 && j >= 0 ? state.covariance[i]![j]! : i === j ? 1 : 0);
  return {
    mean: [state.mean[0]!, state.mean[1]!, own < 0 ? 0 : state.mean[own]!],
    scale: places.flatMap((i) => places.map((j) => factor * entry(i, j))),
    motorScale: factor,
    degrees: 2 * state.alpha,
    prior: { seconds: prior.seconds, fraction: prior.fraction },
    seen: taught.filter(({ flown }) => flown.kind === "seen").length,
    bounds: taught.filter(({ flown }) => flown.kind !== "seen").length,
  };
}
