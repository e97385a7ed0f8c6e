/** Standard acceleration of gravity [m/s²], exact. U.S. Standard Atmosphere, 1976. */
export const STANDARD_GRAVITY = 9.80665;

/** Radius of the earth for geopotential heights [m], exact. U.S. Standard Atmosphere, 1976. */
export const GEOPOTENTIAL_RADIUS = 6_356_766;

/** Molar mass of dry air [kg/kmol], exact. U.S. Standard Atmosphere, 1976. */
export const DRY_AIR_MOLAR_MASS = 28.9644;

/** Gas constant of dry air [J/(kg K)]: 8314.32 J/(kmol K) over the molar mass. U.S. Standard Atmosphere, 1976. */
export const DRY_AIR_GAS_CONSTANT = 8314.32 / DRY_AIR_MOLAR_MASS;

/** Ratio of the specific heats of air, exact. U.S. Standard Atmosphere, 1976. */
export const HEAT_CAPACITY_RATIO = 1.4;
