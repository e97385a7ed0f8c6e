import { noseRadius } from "./nose-shape.js";
import { bodyDiameterAt, bodyStretches } from "./outline.js";
import type { FinShape, Rocket } from "./rocket.js";

/** A rocket to scale: plain points, lengths in m from the nose tip and from the axis. */
export interface OutlinePoints {
  /** Upper profile of the body from the tip to the tail: `r` is the radius at `x`, `x` never falls. */
  readonly body: readonly { readonly x: number; readonly r: number }[];
  /** One fin of each set as a closed polygon in its own plane, from its root's leading edge; `y` counts from the axis. */
  readonly fins: readonly (readonly { readonly x: number; readonly y: number }[])[];
  /** Places of the fittings that run on the guide. */
  readonly fittings: readonly number[];
}

/**
 * Points for a drawing to scale.
 *
 * The nose's curve is sampled ever denser towards its tip, where blunt shapes are steepest. A fin's root lies at the body's
 * radius at the middle of its root, as it does for the normal force.
 *
 * @param rocket without issues (see `rocketIssues`)
 * @param steps along the nose and along the edge of an elliptical fin, ≥ 1
 * @returns [m]
 * @example
 * outlinePoints(exampleRocket).body.at(-1); // { x: 1.5, r: 0.033 }
 */
export function outlinePoints(rocket: Rocket, steps = 32): OutlinePoints {
  return {
    body: bodyProfile(rocket, steps),
    fins: rocket.finSets.map(({ shape, at }) => {
      const corners = finCorners(shape, steps);
      const root = corners[corners.length - 1]!.x;
      const radius = bodyDiameterAt(rocket, at + root / 2) / 2;
      return corners.map(({ x, y }) => ({ x: at + x, y: radius + y }));
    }),
    fittings: rocket.fittings.map((fitting) => fitting.at),
  };
}

function bodyProfile(rocket: Rocket, steps: number): { x: number; r: number }[] {
  const { nose, diameter } = rocket;
  const points = Array.from({ length: steps + 1 }, (_, i) => {
    const s = (i / steps) ** 2;
    return { x: nose.length * s, r: (diameter / 2) * noseRadius(nose.shape, nose.length / diameter, s) };
  });
  for (const { start, end, foreDiameter, aftDiameter } of bodyStretches(rocket)) {
    const last = points[points.length - 1]!;
    if (last.x !== start || last.r !== foreDiameter / 2) points.push({ x: start, r: foreDiameter / 2 });
    points.push({ x: end, r: aftDiameter / 2 });
  }
  return points;
}

/** Corners from the root's leading edge round to its trailing edge, chordwise and spanwise. */
function finCorners(shape: FinShape, steps: number): { x: number; y: number }[] {
  switch (shape.kind) {
    case "trapezoid":
      return [
        { x: 0, y: 0 },
        { x: shape.sweep, y: shape.span },
        { x: shape.sweep + shape.tip, y: shape.span },
        { x: shape.root, y: 0 },
      ];
    case "ellipse":
      return Array.from({ length: steps + 1 }, (_, i) => {
        const angle = (Math.PI * i) / steps;
        return { x: (shape.root / 2) * (1 - Math.cos(angle)), y: i === steps ? 0 : shape.span * Math.sin(angle) };
      });
    case "polygon":
      return shape.points.map(([x, y]) => ({ x, y }));
  }
}
