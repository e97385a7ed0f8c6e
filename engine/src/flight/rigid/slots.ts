/** Places of a moment's loads in their one Float64Array: doubles kept there are not boxed. */
/** Force in body axes [N], weight left out. */
export const FORCE_X = 0;
export const FORCE_Y = 1;
export const FORCE_Z = 2;
/** Moment about the balance point in body axes [N m]. */
export const MOMENT_X = 3;
export const MOMENT_Y = 4;
export const MOMENT_Z = 5;
/** [kg] */
export const MASS = 6;
/** Transverse, about the balance point [kg m²]. */
export const INERTIA = 7;
/** About the axis [kg m²]. */
export const ROLL_INERTIA = 8;
/** From the nose tip [m]. */
export const BALANCE = 9;
/** Body x, towards the nose, in the world: east, north, up; then body y and z. */
export const XE = 10;
export const XN = 11;
export const XU = 12;
export const YE = 13;
export const YN = 14;
export const YU = 15;
export const ZE = 16;
export const ZN = 17;
export const ZU = 18;
/** Growth of the way flown in scale lengths of the turbulence [1/s]. */
export const PACE_HORIZONTAL = 19;
export const PACE_VERTICAL = 20;

export const loadSlots = 21;
