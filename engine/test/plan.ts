import { flightD, windFrom } from "../reference/trajectories/inputs.js";
import type { CuttingTool, DecisionInputs, Limits, Motor, Spread } from "../src/index.js";

const degree = Math.PI / 180;

/** One sigma of every input as the documents' defaults have it; only the shape of the answers hangs on them. */
export const usualSpread: Spread = {
  dragScale: 0.15,
  totalImpulse: 0.03,
  burnTime: 0.03,
  mass: 0.01,
  inertia: 0.05,
  balance: 0.005,
  guideTilt: degree,
  windSpeed: 0.2,
  windFrom: 15 * degree,
  windExponent: 0.05,
  windFloor: 0.7,
  temperature: 2,
  delay: { seconds: 0.75, fraction: 0.1 },
};

/** Two ends and a washer; common practice, no source (check values, section 12). */
export const twoEndTool: CuttingTool = {
  kind: "ends",
  name: "two-end tool",
  ends: [
    { name: "8 s end", removes: { seconds: 8 } },
    { name: "4 s end", removes: { seconds: 4 } },
  ],
  spacers: [{ name: "washer", keepsBack: { seconds: 2 }, count: 1 }],
  depthPerSecond: 0.79375e-3,
  depthError: 0.2e-3,
};

export const usualLimits: Limits = { openingSpeed: 20, openingHeight: 100, leastClean: 0.8, leastHolds: 0.99 };

/** The reference motor with an element of 14 s that may be cut. */
export const adjustableMotor: Motor = {
  ...flightD.motor,
  delay: {
    kind: "adjustable",
    longest: 14,
    mostRemoved: Number.POSITIVE_INFINITY,
    leastLeft: 0,
    clock: "burnout",
    cuttingConfirmed: true,
    toolNamed: "two-end tool",
  },
};

/** Reference flight (d) as a plan: 5 m/s of wind, a 14 s element, the two-end tool. */
export const plan: DecisionInputs = {
  ...flightD,
  motor: adjustableMotor,
  tool: twoEndTool,
  limits: usualLimits,
  spread: usualSpread,
  fieldLimits: {},
};

/** A calm day with a well-known rocket and delay, and a strong recovery: the odds are near certain where the delay fits. */
export const calmPlan: DecisionInputs = {
  ...plan,
  wind: { ...windFrom(1, 270), gradientHeight: 300 },
  recovery: { ...plan.recovery, main: { ...plan.recovery.main, strength: 4000 } },
  spread: {
    ...usualSpread,
    dragScale: 0.03,
    totalImpulse: 0.01,
    burnTime: 0.01,
    guideTilt: 0.3 * degree,
    windFloor: 0.2,
    delay: { seconds: 0.3, fraction: 0.03 },
  },
};

/** As the calm plan, but so heavy that ballast shortens the coast. */
export const heavyPlan: DecisionInputs = { ...calmPlan, rocket: { ...calmPlan.rocket, mass: 1.9 } };
