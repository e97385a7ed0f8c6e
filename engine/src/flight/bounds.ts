/** Below this height the shear is taken as at it [m]: the power law's slope grows without bound towards the ground. */
export const lowestShear = 2;

/**
 * Amplitude of the swing below which the settled model takes over [rad]. What the hand-over costs at this bound is tested
 * on the reference flights and on every example.
 */
export const settledSwing = 0.008;
