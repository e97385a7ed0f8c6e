import { type DecisionInputs, type Learned, learn, type TaughtFlight, withoutLearned } from "@delaywright/engine";
import type { PlanParts } from "../load-plan.js";
import { type DragBasis, dragBasis, dragShift } from "./drag-basis.js";
import type { PastFlight } from "./past-flight.js";

/** Whose next flight is asked about: names of rocket and motor type, the lot, and how the rocket's drag is reckoned now. */
export interface Learner {
  readonly rocket: string;
  readonly motor: string;
  readonly lot: string | null;
  readonly drag: DragBasis;
}

/** Rocket, motor type and lot of a plan, as flights are told apart by them. */
export function learnerOf({ rocket, motor, motorInHand }: PlanParts): Learner {
  return {
    rocket: rocket.document.name,
    motor: motor.document.name,
    lot: motorInHand?.document.lot ?? null,
    drag: dragBasis(rocket.document),
  };
}

/** Whether a flight's factor on drag cannot be said as one on the drag that is reckoned now. */
export function hasOtherDrag({ data, drag }: PastFlight, learner: Learner): boolean {
  return data.rocket === learner.rocket && drag !== null && dragShift(drag, learner.drag) === null;
}

/**
 * What past flights teach a plan.
 *
 * A rocket whose document has since taken another scale of its drag keeps what its flights taught: their factors are turned
 * into factors on the drag as it is now.
 *
 * @param past flights of the library, those that teach nothing among them
 * @param learner whose next flight is asked about
 * @param inputs of that plan: its spread holds the priors
 * @example
 * const learned = learnFrom(past, learnerOf(parts), inputs);
 * await decide(withLearned(inputs, learned));
 */
export function learnFrom(past: readonly PastFlight[], learner: Learner, inputs: DecisionInputs): Learned {
  const flights = past.flatMap((flight) => taughtNow(flight, learner) ?? []);
  return learn(flights, learner, withoutLearned(inputs).spread);
}

function taughtNow(flight: PastFlight, learner: Learner): TaughtFlight | undefined {
  const { taught, drag } = flight;
  if (taught === null) return undefined;
  if (taught.climb === null || taught.rocket !== learner.rocket || drag === null) return taught;
  const shift = dragShift(drag, learner.drag);
  return { ...taught, climb: shift === null ? null : { ...taught.climb, lnDrag: taught.climb.lnDrag + shift } };
}
