/** What Taylor and Maccoll's equation gives for one cone. */
export interface ConeFlow {
  /** [rad] */
  readonly shockAngle: number;
  /** Pressure coefficient on the surface. */
  readonly pressure: number;
  /** Mach number on the surface. */
  readonly mach: number;
}

const STEPS = 400;

/** From a shock inwards until the flow runs along a ray: that ray is the cone. Speeds over the greatest speed; weak shock. */
function coneBehind(mach: number, shock: number): { readonly angle: number; readonly flow: ConeFlow } {
  const normal = (mach * Math.sin(shock)) ** 2;
  const turn = Math.atan((2 / Math.tan(shock)) * ((normal - 1) / (mach * mach * (1.4 + Math.cos(2 * shock)) + 2)));
  const behind = Math.sqrt((1 + 0.2 * normal) / (1.4 * normal - 0.2)) / Math.sin(shock - turn);
  const speed = (5 / (behind * behind) + 1) ** -0.5;
  const rates = (t: number, u: number, v: number): readonly [number, number] => {
    const sound = 0.2 * (1 - u * u - v * v);
    return [v, (v * v * u - sound * (2 * u + v / Math.tan(t))) / (sound - v * v)];
  };
  let [t, u, v] = [shock, speed * Math.cos(shock - turn), -speed * Math.sin(shock - turn)];
  const h = -shock / STEPS;
  const step = (h: number) => {
    const [a1, b1] = rates(t, u, v);
    const [a2, b2] = rates(t + h / 2, u + (h / 2) * a1, v + (h / 2) * b1);
    const [a3, b3] = rates(t + h / 2, u + (h / 2) * a2, v + (h / 2) * b2);
    const [a4, b4] = rates(t + h, u + h * a3, v + h * b3);
    return [t + h, u + (h / 6) * (a1 + 2 * a2 + 2 * a3 + a4), v + (h / 6) * (b1 + 2 * b2 + 2 * b3 + b4)] as const;
  };
  for (let k = 0; k < STEPS - 1; k++) {
    const next = step(h);
    if (next[2] >= 0) break;
    [t, u, v] = next;
  }
  for (let k = 0; k < 6; k++) [t, u, v] = step(-v / rates(t, u, v)[1]);
  const surface = Math.sqrt((5 * u * u) / (1 - u * u));
  const jump = (2.8 * normal - 0.4) / 2.4;
  const pressure = jump * ((1 + 0.2 * behind * behind) / (1 + 0.2 * surface * surface)) ** 3.5;
  return { angle: t, flow: { shockAngle: shock, pressure: (pressure - 1) / (0.7 * mach * mach), mach: surface } };
}

/**
 * Flow over a cone along the axis, shock attached and weak; undefined where the shock stands off.
 *
 * @param mach > 1
 * @param halfAngle [rad], from 3 degrees on: the shock of a more slender cone is too weak for the steps
 */
export function coneFlow(mach: number, halfAngle: number): ConeFlow | undefined {
  const weakest = Math.asin(1 / mach) + 1e-9;
  const shocks = Array.from({ length: 200 }, (_, k) => weakest + (1.4 - weakest) * (k / 200) ** 2);
  const high = shocks.findIndex((shock, k) => k > 0 && coneBehind(mach, shock).angle >= halfAngle);
  if (high < 0) return undefined;
  let [low, top] = [shocks[high - 1] as number, shocks[high] as number];
  for (let k = 0; k < 60; k++) {
    const middle = (low + top) / 2;
    if (coneBehind(mach, middle).angle < halfAngle) low = middle;
    else top = middle;
  }
  return coneBehind(mach, top).flow;
}

const degree = Math.PI / 180;

/** Greatest relative difference of a cone law from the integration, half angles 4 to 20 degrees, Mach 1.2 to 3, shock attached, flow behind it supersonic. */
export function worstConeDifference(law: (halfAngle: number, mach: number) => number): number {
  let worst = 0;
  for (const mach of [1.2, 1.5, 2, 2.5, 3])
    for (let angle = 4; angle <= 20; angle += 2) {
      const exact = coneFlow(mach, angle * degree);
      if (!exact || exact.mach < 1) continue;
      worst = Math.max(worst, Math.abs(law(angle * degree, mach) / exact.pressure - 1));
    }
  return worst;
}
