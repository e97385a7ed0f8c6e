/** [m] International foot, exact. */
const FOOT = 0.3048;
/** [Pa] Pound-force per square foot. NIST SP 811, Appendix B. */
const POUND_PER_SQUARE_FOOT = 47.88025898;
/** Below this Reynolds number a component's friction is held: slower flow carries no drag that matters. */
const LEAST_REYNOLDS = 1e4;
/** Where the boundary layer of a smooth plate turns turbulent. */
const CRITICAL_REYNOLDS = 5e5;
/** Below this length over grain the rough law means nothing. */
const LEAST_ROUGHNESS_RATIO = 100;
/** Difference, as a fraction of their mean, below which the greater of two laws is rounded. */
const ROUNDING = 0.2;

/**
 * Friction of a smooth flat plate in laminar flow.
 *
 * @param reynolds on the plate's length, > 0, below some 5e5
 * @returns mean coefficient on the wetted area
 * @source Blasius, in H. Schlichting, Boundary-Layer Theory, ch. VII
 * @example
 * laminarFriction(1e6); // 0.001328
 */
export function laminarFriction(reynolds: number): number {
  return 1.328 / Math.sqrt(reynolds);
}

/**
 * Friction of a smooth flat plate, turbulent from its leading edge.
 *
 * @param reynolds on the plate's length, 5e5…1e9
 * @returns mean coefficient on the wetted area
 * @source Prandtl-Schlichting, in H. Schlichting, Boundary-Layer Theory, ch. XXI
 * @example
 * turbulentFriction(1e7); // 0.00300371
 */
export function turbulentFriction(reynolds: number): number {
  return 0.455 / Math.log10(reynolds) ** 2.58;
}

/**
 * Friction of a smooth flat plate whose layer is laminar up to Reynolds number 5e5.
 *
 * @param reynolds on the plate's length, ≥ 5e5
 * @returns mean coefficient on the wetted area
 * @source H. Schlichting, Boundary-Layer Theory, ch. XXI: turbulent less 1700/Re; 1700 memory
 * @example
 * transitionalFriction(3e6); // 0.00310316
 */
export function transitionalFriction(reynolds: number): number {
  return turbulentFriction(reynolds) - 1700 / reynolds;
}

/**
 * Friction of a fully rough plate, whatever the Reynolds number.
 *
 * @param roughnessRatio plate's length over the equivalent sand grain, 1e2…1e6; Infinity: 0
 * @returns mean coefficient on the wetted area
 * @source H. Schlichting, Boundary-Layer Theory, ch. XXI
 * @example
 * fullyRoughFriction(1e5); // 0.0031702
 */
export function fullyRoughFriction(roughnessRatio: number): number {
  return (1.89 + 1.62 * Math.log10(roughnessRatio)) ** -2.5;
}

/**
 * What compressibility leaves of turbulent smooth friction.
 *
 * @param mach ≥ 0
 * @returns factor, 1 at Mach 0
 * @source (1 + 0.144 M²)^−0.65, aircraft-design textbook form; memory
 * @example
 * turbulentMachFactor(2); // 0.7440266
 */
export function turbulentMachFactor(mach: number): number {
  return (1 + 0.144 * mach * mach) ** -0.65;
}

/**
 * What compressibility leaves of fully rough friction.
 *
 * @param mach ≥ 0
 * @returns factor, 1 at Mach 0
 * @source 1/(1 + 0.18 M²), texts based on S. F. Hoerner, Fluid-Dynamic Drag (1965); memory
 * @example
 * roughMachFactor(0.8); // 0.8967001
 */
export function roughMachFactor(mach: number): number {
  return 1 / (1 + 0.18 * mach * mach);
}

/** The greater of two positive values, rounded where they are within 20 % of each other (at most 5 % above it). */
function roundedMax(a: number, b: number): number {
  const mean = (a + b) / 2;
  const apart = Math.abs(a - b) / (ROUNDING * mean);
  const greater = Math.max(a, b);
  return apart >= 1 ? greater : greater + (ROUNDING * mean * (1 - apart) ** 2) / 4;
}

/**
 * Friction of a smooth plate at any Reynolds number: laminar, then partly turbulent.
 *
 * The corner between the two is rounded, so that a table over Mach number can follow it.
 *
 * @param reynolds on the plate's length; held below 1e4
 * @returns mean coefficient on the wetted area, incompressible
 * @source the greater of Blasius and the transitional law
 * @example
 * smoothFriction(1e5); // 0.0041995
 */
export function smoothFriction(reynolds: number): number {
  const held = Math.max(reynolds, LEAST_REYNOLDS);
  const laminar = laminarFriction(held);
  return held < CRITICAL_REYNOLDS / 2 ? laminar : roundedMax(laminar, transitionalFriction(held));
}

/**
 * Skin friction of a component: the greater of its smooth and its rough value, each with its Mach factor.
 *
 * What does not change from call to call is worked out once.
 *
 * @param roughnessRatio component's length over the equivalent sand grain; Infinity: polished
 * @returns mean coefficient on the wetted area, from the Reynolds number on the component's length and the Mach number; finite and
 * positive for all of them
 * @source the laws above; the corner between them is rounded, as real surfaces do
 * @example
 * skinFriction(Infinity)(1e7, 0); // 0.00283371
 */
export function skinFriction(roughnessRatio: number): (reynolds: number, mach: number) => number {
  const roughAtRest = fullyRoughFriction(Math.max(roughnessRatio, LEAST_ROUGHNESS_RATIO));
  let lastMach = 0;
  let smoothFactor = turbulentMachFactor(0);
  let rough = roughAtRest * roughMachFactor(0);
  return (reynolds, mach) => {
    if (mach !== lastMach) {
      lastMach = mach;
      smoothFactor = turbulentMachFactor(mach);
      rough = roughAtRest * roughMachFactor(mach);
    }
    return roundedMax(smoothFriction(reynolds) * smoothFactor, rough);
  };
}

/**
 * Friction drag of a whole body by a rule of thumb, to hold a build-up against.
 *
 * @param fineness length over diameter
 * @param length [m]
 * @param mach > 0
 * @param dynamicPressure [Pa]
 * @returns coefficient on the frontal area
 * @source E. L. Fleeman, Tactical Missile Design (2006), from Jerger: 0.053 (L/d) [M/(q L)]^0.2 with q in lbf/ft², L in ft
 * @example
 * bodyFrictionEstimate({ fineness: 15, length: 1, mach: 0.5, dynamicPressure: 17_732 }); // 0.1672029
 */
export function bodyFrictionEstimate({
  fineness,
  length,
  mach,
  dynamicPressure,
}: {
  readonly fineness: number;
  readonly length: number;
  readonly mach: number;
  readonly dynamicPressure: number;
}): number {
  const feet = length / FOOT;
  const poundsPerSquareFoot = dynamicPressure / POUND_PER_SQUARE_FOOT;
  return 0.053 * fineness * (mach / (poundsPerSquareFoot * feet)) ** 0.2;
}
