import type { FinShape } from "../../src/rocket/rocket.js";

/** Complete elliptic integral of the second kind by the midpoint rule, exact to rounding for a smooth periodic integrand. */
export function ellipticE(modulus: number): number {
  const count = 4000;
  let sum = 0;
  for (let k = 0; k < count; k++) sum += Math.sqrt(1 - (modulus * Math.sin(((k + 0.5) * Math.PI) / (2 * count))) ** 2);
  return (sum * Math.PI) / (2 * count);
}

/** One wing, at the Mach number at which β is 1. */
export interface Wing {
  readonly name: string;
  readonly shape: FinShape;
  /** Slope on its area [1/rad]. */
  readonly slope: number;
  /** From the root's leading edge [m]. */
  readonly at: number;
}

const rectangle = (aspectRatio: number): Wing => {
  const chord = 2 / aspectRatio;
  return {
    name: `rectangle, β AR ${aspectRatio}`,
    shape: { kind: "trapezoid", root: chord, tip: chord, span: 1, sweep: 0 },
    slope: 4 * (1 - 1 / (2 * aspectRatio)),
    at: (chord * (aspectRatio - 2 / 3)) / (2 * aspectRatio - 1),
  };
};

/** Slope of a triangular wing at β = 1, by the slope of its leading edge from the axis. */
export const triangleSlope = (m: number) => (m >= 1 ? 4 : (2 * Math.PI * m) / ellipticE(Math.sqrt(1 - m * m)));

const triangle = (m: number): Wing => ({
  name: `triangle, m ${m}`,
  shape: {
    kind: "polygon",
    points: [
      [0, 0],
      [1 / m, 1],
      [1 / m, 0],
    ],
  },
  slope: triangleSlope(m),
  at: 2 / (3 * m),
});

export const wings: readonly Wing[] = [...[1.3, 2, 4, 8].map(rectangle), ...[0.3, 0.5, 0.8, 1.2, 2].map(triangle)];

/** Greatest relative differences of slope and of place, over the wings. */
export function worstWingDifference(lift: (shape: FinShape) => { readonly slope: number; readonly at: number }): {
  readonly slope: number;
  readonly at: number;
} {
  let [slope, at] = [0, 0];
  for (const wing of wings) {
    const found = lift(wing.shape);
    slope = Math.max(slope, Math.abs(found.slope / wing.slope - 1));
    at = Math.max(at, Math.abs(found.at / wing.at - 1));
  }
  return { slope, at };
}
