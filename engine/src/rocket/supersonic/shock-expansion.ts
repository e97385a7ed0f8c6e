import { stagnationPressureRatio } from "../drag/stagnation.js";
import { machAfterTurn, machAtPressure, prandtlMeyerAngle, pressureOverStagnation } from "./gas.js";
import { coneSurface, steepestStart, waveDrag } from "./tangent-cone.js";

/** A body of revolution as straight frusta: points (from the tip, radius) [m], radius 0 at the tip. */
export type Profile = readonly (readonly [x: number, radius: number])[];

/** What supersonic flow does to a pointed or blunt body of revolution, on the circle of `profile`'s last radius. */
export interface BodyFlow {
  /** Pressure drag without base. */
  readonly drag: number;
  /** Normal-force slope [1/rad]. */
  readonly slope: number;
  /** Where the normal force acts, from the tip [m]. */
  readonly at: number;
}

/** Flow at a point of the surface. */
interface Surface {
  pressure: number;
  mach: number;
  /** Growth of pressure along the surface [1/m]. */
  growth: number;
  /** Normal-force loading. */
  loading: number;
  /** Stagnation pressure over the free stream's pressure. */
  stagnation: number;
}

const coneSlope = (angle: number) => 2 * Math.cos(angle) ** 2;
const stiffness = ({ pressure, mach }: Surface) => (0.7 * pressure * mach * mach) / (mach * mach - 1);
const tubeArea = ({ mach }: Surface) => ((1 + 0.2 * mach * mach) / 1.2) ** 3 / mach;
const loadFactor = ({ pressure, mach }: Surface) => (pressure * mach * mach) / Math.sqrt(mach * mach - 1);

function startAt(mach: number, angle: number): Surface {
  const start = coneSurface(mach, angle);
  const stagnation = start.pressure / pressureOverStagnation(start.mach);
  return { ...start, stagnation, growth: 0, loading: Math.tan(angle) * coneSlope(angle) };
}

/** Around the corner between two frusta: Prandtl-Meyer, and what it does to the growth of pressure behind it. */
function around(before: Surface, from: number, to: number, radius: number): Surface {
  const mach = machAfterTurn(Math.max(1e-4, prandtlMeyerAngle(before.mach) + from - to), before.mach);
  const after = { ...before, mach, pressure: before.stagnation * pressureOverStagnation(mach) };
  const widening = tubeArea(before) / tubeArea(after);
  after.growth =
    (stiffness(after) / radius) * (widening * Math.sin(from) - Math.sin(to)) +
    (stiffness(after) / stiffness(before)) * widening * before.growth;
  after.loading = (before.loading * loadFactor(after)) / loadFactor(before);
  return after;
}

/** Along a frustum the pressure tends to that of its tangent cone; returns the means and leaves `surface` at its end. */
function along(
  surface: Surface,
  angle: number,
  freeMach: number,
  length: number,
): { pressure: number; loading: number } {
  const { pressure: start, growth, loading } = surface;
  const limit = coneSurface(freeMach, angle).pressure;
  const limitLoading = Math.tan(angle) * coneSlope(angle);
  const rate = (growth * length) / (limit - start);
  if (!(rate > 1e-9)) return { pressure: start, loading };
  const left = Math.exp(-Math.min(rate, 50));
  const mean = (1 - left) / rate;
  surface.pressure = limit - (limit - start) * left;
  surface.growth = growth * left;
  surface.loading = limitLoading + (loading - limitLoading) * left;
  surface.mach = Math.max(1.02, machAtPressure(Math.min(1, surface.pressure / surface.stagnation)));
  return { pressure: limit - (limit - start) * mean, loading: limitLoading + (loading - limitLoading) * mean };
}

/**
 * Pressure drag and normal force of a body of revolution in supersonic flow, by the second-order shock-expansion method.
 *
 * What is steeper than the steepest pointed start is a blunt cap, on which the pressure falls from the stagnation point's to that start's by
 * Newton's sine-squared. Normal force of tangent cones: 2 cos². Small angles of attack; narrowing frusta tend to the free stream's pressure.
 *
 * @param mach 1.2…3.7
 * @source C. A. Syvertson, D. H. Dennis, NACA Report 1328 (1957); tangent cones by `waveDrag`; memory
 * @example
 * shockExpansion([[0, 0], [0.3, 0.05]], 2).drag; // a cone: 0.0976
 */
export function shockExpansion(profile: Profile, mach: number): BodyFlow {
  const q = 0.7 * mach * mach;
  const steepest = steepestStart(mach);
  const base = profile.at(-1)?.[1] ?? 1;
  const [capTop, capEnd] = [stagnationPressureRatio(mach), waveDrag(steepest, mach)];
  const sharp = Math.sin(steepest) ** 2;
  let surface: Surface | undefined;
  let [drag, slope, moment, last] = [0, 0, 0, 0];
  const push = (force: number, at: number) => {
    slope += force;
    moment += force * at;
  };
  for (let k = 0; k + 1 < profile.length; k++) {
    const [x0, r0] = profile[k]!;
    const [x1, r1] = profile[k + 1]!;
    const angle = Math.atan2(r1 - r0, x1 - x0);
    const ring = (r1 * r1 - r0 * r0) / (base * base);
    const middle = (x0 + x1) / 2;
    if (!surface && angle > steepest) {
      drag += ring * (capEnd + ((capTop - capEnd) * (Math.sin(angle) ** 2 - sharp)) / (1 - sharp));
      push(ring * coneSlope(angle), middle);
      last = steepest;
      continue;
    }
    if (!surface) surface = startAt(mach, k === 0 ? angle : steepest);
    if (k > 0) surface = around(surface, last, angle, r0);
    const mean = along(surface, angle, mach, Math.hypot(x1 - x0, r1 - r0));
    drag += (ring * (mean.pressure - 1)) / q;
    push((mean.loading * (r0 + r1) * (x1 - x0)) / (base * base), middle);
    last = angle;
  }
  return { drag, slope, at: moment / slope };
}
