/**
 * Places of the hot loop's numbers in its one Float64Array: doubles kept there are neither boxed nor chased through scopes.
 *
 * A draw's constants first, then those of the current stretch of the thrust curve.
 */
export const AREA = 0;
/** Half the reference area times the drag scale. */
export const HALF_DRAG_AREA = 1;
export const GRAVITY0 = 2;
export const GRAVITY1 = 3;
export const GRAVITY2 = 4;
/** Airframe with ballast: mass, balance, inertia about it. */
export const FRAME_MASS = 5;
export const FRAME_BALANCE = 6;
export const FRAME_INERTIA = 7;
export const MOTOR_CENTRE = 8;
export const MOTOR_AFT = 9;
export const MOTOR_LOADED = 10;
export const PROPELLANT = 11;
/** Squared radius of gyration of the motor about its own centre. */
export const MOTOR_GYRATION = 12;
export const INVERSE_AIR_STEP = 13;
export const WIND_TOP = 14;
export const WIND_SCALE = 15;
export const INVERSE_MACH_STEP = 16;
export const INVERSE_DRAG_HEIGHT = 17;
/** Cross-flow: area times coefficient over the reference area; place. */
export const CROSS_FLOW = 18;
export const CROSS_FLOW_AT = 19;
export const GUIDE_EAST = 20;
export const GUIDE_NORTH = 21;
export const GUIDE_UP = 22;
export const TRAVEL = 23;
/** Shear below `lowestShear`. */
export const LOW_SHEAR_EAST = 24;
export const LOW_SHEAR_NORTH = 25;

export const STRETCH_FROM = 26;
export const STRETCH_TO = 27;
export const THRUST = 28;
export const THRUST_SLOPE = 29;
/** Share of the propellant spent: s0 + dt (s1 + dt s2). */
export const SPENT0 = 30;
export const SPENT1 = 31;
export const SPENT2 = 32;
/** 1 before the thrust curve's last point, else 0. */
export const THRUSTING = 33;

/** What stays the same once the motor is empty: one over mass and over inertia, balance. */
export const EMPTY_PER_MASS = 34;
export const EMPTY_PER_INERTIA = 35;
export const EMPTY_BALANCE = 36;

/** Square of the swing's frequency when it was last measured [1/s²]; 0: not stable. */
export const SWING_FREQUENCY2 = 37;

/** Way on which the aft fitting alone is on the guide, and its place. */
export const PIVOT_WAY = 38;
export const PIVOT_AT = 39;

/** Of the whole motor at the plan's: its impulse, and the end of its burn. */
export const TOTAL_IMPULSE = 40;
export const BURN_END = 41;

export const slotCount = 42;
