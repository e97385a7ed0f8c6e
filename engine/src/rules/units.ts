/** Units in which the codes are written. */

/** One foot [m]. */
export const foot = 0.3048;
/** One mile an hour [m/s]. */
export const mileAnHour = 0.44704;
/** One degree [rad]. */
export const degree = Math.PI / 180;
