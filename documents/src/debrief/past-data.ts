import type { PastFlightData, UntaughtCode } from "../answer/debrief-data.js";
import type { PastFlight } from "./past-flight.js";
import { hasOtherDrag, type Learner } from "./teach.js";

/** Why a flight teaches this plan nothing, or not all. */
export function untaughtOf(flight: PastFlight, learner: Learner): readonly UntaughtCode[] {
  const { rocket, motor, untaught } = flight.data;
  if (flight.taught === null) return untaught;
  if (rocket !== learner.rocket && motor !== learner.motor) return ["other-rocket-and-motor"];
  return hasOtherDrag(flight, learner) ? [...untaught, "other-drag"] : untaught;
}

/** A flight of the library, as it is shown beside the others. */
export function pastData(flight: PastFlight, isThis: boolean, learner: Learner): PastFlightData {
  return { ...flight.data, isThis, untaught: untaughtOf(flight, learner) };
}
