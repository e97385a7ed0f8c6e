import type { FinSet, Rocket } from "@delaywright/engine";

/**
 * Way along a rail until the forward fitting leaves it.
 *
 * The tail rests on the stop, so the forward fitting starts above the stop by as much as it sits before the tail. The tail is
 * whatever reaches furthest aft: the tube, a fin or the motor.
 *
 * @param rocket with at least one fitting
 * @param rail length of the rail [m]
 * @param stop height of the stop above the rail's lower end [m]
 * @returns [m]; not above 0 where the fitting starts beyond the rail's end; undefined without a fitting
 */
export function guideTravel(rocket: Rocket, rail: number, stop: number): number | undefined {
  const [first, ...others] = rocket.fittings.map((fitting) => fitting.at);
  if (first === undefined) return undefined;
  const tail = Math.max(rocket.length, rocket.mount.motorAftAt, ...rocket.finSets.map(aftOf));
  return rail - stop - (tail - Math.min(first, ...others));
}

function aftOf({ shape, at }: FinSet): number {
  if (shape.kind === "polygon") return at + Math.max(...shape.points.map(([chordwise]) => chordwise));
  return at + (shape.kind === "trapezoid" ? Math.max(shape.root, shape.sweep + shape.tip) : shape.root);
}
