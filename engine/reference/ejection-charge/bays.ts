export const INCH = 0.0254;
const POUND = 0.45359237;
export const GRAM = 0.001;
export const POUND_FORCE = POUND * 9.80665;
export const PSI = POUND_FORCE / INCH ** 2;

/** SOURCE.md: diameter and length [m]; in³, cm³; grams at 15 and 10 psi; end force at 15 psi in lbf and N, as printed. */
export const bays = [
  [2.6 * INCH, 8 * INCH, 42.474333, 696.03, 0.3285245, 0.2190163, 79.63937, 354.2536],
  [3 * INCH, 10 * INCH, 70.685835, 1158.333, 0.5467308, 0.3644872, 106.02875, 471.6394],
  [4 * INCH, 12 * INCH, 150.796447, 2471.111, 1.1663591, 0.7775727, 188.49556, 838.47],
  [0.054, 0.2, 27.951573, 458.044, 0.2161959, 0.1441306, 53.24775, 236.8578],
] as const;
