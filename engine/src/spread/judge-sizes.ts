import type { i32 } from "../math/doubles.js";

/** Most times at which a flight's airspeed passes one level. */
export const mostCrossings = 8;

/** Most times at which the outcome of an opening changes. */
export const mostEdges = 2 * mostCrossings + 5;

/** Parts of a step near the top, at whose ends the airspeed is looked at. */
export const partsNearTop: i32 = 6;

/** Most points at which the airspeed of a flight is looked at. */
export function mostNodes(records: i32): i32 {
  return partsNearTop * records + 2;
}
