import type { Learned, TaughtFlight } from "./learned.js";
import { type LearningPriors, ownShare } from "./priors.js";

/** A joint normal of the logarithms of rockets' drag and motor types' impulse. */
class JointScales {
  readonly places = new Map<string, number>();
  readonly mean: number[] = [];
  readonly covariance: number[][] = [];

  /** The place of one of them; it enters with its prior variance. */
  place(key: string, variance: number): number {
    const known = this.places.get(key);
    if (known !== undefined) return known;
    const place = this.mean.length;
    this.places.set(key, place);
    this.mean.push(0);
    for (const row of this.covariance) row.push(0);
    this.covariance.push(Array.from({ length: place + 1 }, (_, i) => (i === place ? variance : 0)));
    return place;
  }

  /** Takes in one observed combination Σ weight · state, with the variance of its error. */
  observe(weights: ReadonlyMap<number, number>, value: number, variance: number): void {
    const { mean, covariance } = this;
    const across = covariance.map((row) => {
      let sum = 0;
      for (const [place, weight] of weights) sum += weight * row[place]!;
      return sum;
    });
    let whole = variance;
    let off = value;
    for (const [place, weight] of weights) {
      whole += weight * across[place]!;
      off -= weight * mean[place]!;
    }
    if (!(whole > 0)) return;
    for (let i = 0; i < mean.length; i++) {
      const gain = across[i]! / whole;
      mean[i]! += gain * off;
      for (let j = 0; j < mean.length; j++) covariance[i]![j]! -= gain * across[j]!;
    }
  }
}

/** Does the climb tell anything, and is its covariance one? */
export function climbTells({ climb }: TaughtFlight): boolean {
  if (climb === null || !Number.isFinite(climb.lnDrag) || !Number.isFinite(climb.lnImpulse)) return false;
  const [[drag, both], [other, impulse]] = climb.covariance;
  if (!(drag >= 0 && impulse >= 0)) return false;
  if (!Number.isFinite(drag) || !Number.isFinite(impulse)) return Number.isFinite(drag) || Number.isFinite(impulse);
  return Math.abs(both - other) <= 1e-9 * (drag + impulse) && both * both <= drag * impulse * (1 + 1e-9);
}

/** Takes in the two figures of a climb as two observations whose errors are independent. */
function observeClimb(state: JointScales, flight: TaughtFlight, priors: LearningPriors): void {
  const climb = flight.climb;
  if (climb === null) return;
  const drag = state.place(`drag ${flight.rocket}`, (1 - ownShare.drag) * priors.dragScale ** 2);
  const impulse = state.place(`impulse ${flight.motor}`, (1 - ownShare.impulse) * priors.totalImpulse ** 2);
  const ofDrag = climb.covariance[0][0] + ownShare.drag * priors.dragScale ** 2;
  const ofImpulse = climb.covariance[1][1] + ownShare.impulse * priors.totalImpulse ** 2;
  if (!Number.isFinite(ofDrag)) {
    state.observe(new Map([[impulse, 1]]), climb.lnImpulse, ofImpulse);
    return;
  }
  if (!Number.isFinite(ofImpulse)) {
    state.observe(new Map([[drag, 1]]), climb.lnDrag, ofDrag);
    return;
  }
  // the impulse less its regression on the drag has an error of its own
  const slope = ofDrag > 0 ? climb.covariance[0][1] / ofDrag : 0;
  state.observe(new Map([[drag, 1]]), climb.lnDrag, ofDrag);
  state.observe(
    new Map([
      [impulse, 1],
      [drag, -slope],
    ]),
    climb.lnImpulse - slope * climb.lnDrag,
    ofImpulse - slope * climb.covariance[0][1],
  );
}

/**
 * Drag of a rocket and impulse of a motor type for the next flight, after all flights that are linked to them.
 *
 * The logarithms of every rocket's drag and every type's impulse are normal about zero; each flight observes one of each with
 * the covariance of its fit and the single flight's own scatter. Flights of the same rocket on other motors, and of other
 * rockets on the same motor, teach through what they share.
 *
 * @source linear normal updating, one observation at a time; for example A. Gelman et al., Bayesian Data Analysis, 3.5 (memory)
 */
export function learnScales(
  flights: readonly TaughtFlight[],
  of: { readonly rocket: string; readonly motor: string },
  priors: LearningPriors,
): Pick<Learned, "drag" | "impulse" | "correlation"> {
  const state = new JointScales();
  const drag = state.place(`drag ${of.rocket}`, (1 - ownShare.drag) * priors.dragScale ** 2);
  const impulse = state.place(`impulse ${of.motor}`, (1 - ownShare.impulse) * priors.totalImpulse ** 2);
  for (const flight of flights) if (climbTells(flight)) observeClimb(state, flight, priors);
  const { mean, covariance } = state;
  const ofDrag = covariance[drag]![drag]! + ownShare.drag * priors.dragScale ** 2;
  const ofImpulse = covariance[impulse]![impulse]! + ownShare.impulse * priors.totalImpulse ** 2;
  const both = covariance[drag]![impulse]!;
  return {
    drag: { mean: mean[drag]!, sd: Math.sqrt(ofDrag) },
    impulse: { mean: mean[impulse]!, sd: Math.sqrt(ofImpulse) },
    correlation: both === 0 ? 0 : both / Math.sqrt(ofDrag * ofImpulse),
  };
}
