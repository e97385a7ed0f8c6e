/** Most times at which a flight's airspeed passes one level. */
export const mostCrossings = 8;

/** Most times at which the outcome of an opening changes. */
export const mostEdges = 2 * mostCrossings + 5;

/** Points looked at beside the ends of the records. */
export const nodesBesideRecords = 64;
