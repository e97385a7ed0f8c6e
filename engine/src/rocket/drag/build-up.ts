import { keepingLast } from "../../math/keeping-last.js";
import { finPlanform } from "../normal-force/planform.js";
import { baseDiameter, bodyFineness, bodyStretches, bodyWettedArea, referenceArea } from "../outline.js";
import type { FinSet, Rocket } from "../rocket.js";
import { baseDrag } from "./base.js";
import { bodyFormFactor } from "./body.js";
import { finFormFactor, leadingEdgeDrag, thicknessWaveDrag, trailingEdgeDrag } from "./fins.js";
import { fittingDrag } from "./fittings.js";
import { skinFriction } from "./friction.js";
import { noseDrag } from "./nose.js";
import { transitionDrag } from "./transitions.js";

/** State of the air flow that a drag coefficient depends on. */
export interface FlowState {
  /** 0…5 */
  readonly mach: number;
  /** Airspeed times density over viscosity [1/m]. */
  readonly reynoldsPerMetre: number;
  /** Whether the motor's jet fills its part of the base. */
  readonly thrusting: boolean;
}

/** Drag coefficients on the reference area, by cause; they add up to the whole. */
export interface DragBreakdown {
  readonly bodyFriction: number;
  readonly finFriction: number;
  readonly finEdges: number;
  readonly nose: number;
  readonly transitions: number;
  readonly base: number;
  readonly fittings: number;
}

/** Causes of drag as functions of what each depends on. */
interface Causes {
  readonly bodyFriction: (mach: number, reynoldsPerMetre: number) => number;
  readonly finFriction: (mach: number, reynoldsPerMetre: number) => number;
  readonly finEdges: (mach: number) => number;
  readonly nose: (mach: number) => number;
  readonly transitions: (mach: number) => number;
  readonly base: (mach: number, thrusting: boolean) => number;
  readonly fittings: (mach: number) => number;
}

const ratio = (length: number, roughness: number) => (roughness > 0 ? length / roughness : Number.POSITIVE_INFINITY);

function prepareFins(rocket: Rocket, fins: FinSet): Pick<Causes, "finFriction" | "finEdges"> {
  const planform = finPlanform(fins.shape);
  const reference = referenceArea(rocket.diameter);
  const thicknessRatio = fins.thickness / planform.meanChord;
  const wetted = (2 * fins.count * planform.area * finFormFactor(thicknessRatio)) / reference;
  const frontal = (fins.count * planform.span * fins.thickness) / reference;
  const section = { leading: fins.leadingEdge, trailing: fins.trailingEdge };
  const wave = thicknessWaveDrag(fins.shape, section, thicknessRatio);
  const sides = (fins.count * planform.area) / reference;
  const friction = skinFriction(ratio(planform.meanChord, rocket.roughness));
  return {
    finFriction: (mach, reynoldsPerMetre) => wetted * friction(reynoldsPerMetre * planform.meanChord, mach),
    finEdges: (mach) =>
      frontal *
        (leadingEdgeDrag(fins.leadingEdge, planform.leadingSweep, mach) + trailingEdgeDrag(fins.trailingEdge, mach)) +
      sides * wave(mach),
  };
}

function sumAt(drags: readonly ((mach: number) => number)[], mach: number): number {
  let sum = 0;
  for (const drag of drags) sum += drag(mach);
  return sum;
}

/** All causes that know nothing of the motor. A plan is asked again and again, and its rocket mostly is the same. */
const causesOfRocket = keepingLast((rocket: Rocket): Omit<Causes, "base"> => {
  const { diameter, length, roughness } = rocket;
  const bodyWetted = (bodyWettedArea(rocket) * bodyFormFactor(bodyFineness(rocket))) / referenceArea(diameter);
  const friction = skinFriction(ratio(length, roughness));
  const finSets = rocket.finSets.map((fins) => prepareFins(rocket, fins));
  const edges = finSets.map(({ finEdges }) => finEdges);
  const transitions = bodyStretches(rocket)
    .filter((stretch) => stretch.kind === "transition")
    .map((stretch) => transitionDrag(stretch, diameter));
  const fittings = rocket.fittings.map((fitting) => (mach: number) => fittingDrag(fitting, diameter, mach));
  return {
    bodyFriction: (mach, reynoldsPerMetre) => bodyWetted * friction(reynoldsPerMetre * length, mach),
    finFriction: (mach, reynoldsPerMetre) => {
      let sum = 0;
      for (const { finFriction } of finSets) sum += finFriction(mach, reynoldsPerMetre);
      return sum;
    },
    finEdges: (mach) => sumAt(edges, mach),
    nose: noseDrag(rocket.nose, diameter),
    transitions: (mach) => sumAt(transitions, mach),
    fittings: (mach) => sumAt(fittings, mach),
  };
});

function prepareCauses(rocket: Rocket, motor: { readonly diameter: number }): Causes {
  const { diameter } = rocket;
  const aft = baseDiameter(rocket);
  return {
    ...causesOfRocket(rocket),
    base: (mach, thrusting) =>
      baseDrag({ mach, thrusting, baseDiameter: aft, motorDiameter: motor.diameter, diameter }),
  };
}

/**
 * Axial drag of a rocket built up from handbook relations, cause by cause.
 *
 * For Mach 0…5, attached flow, small angles of attack. Interference between fins and body, and trim drag, are left out.
 *
 * @param rocket without issues (see `rocketIssues`); its `drag` field is not looked at
 * @param motor whose jet fills part of the base under thrust; its diameter [m]
 * @returns coefficients on the circle of the reference diameter, for a state of the flow
 * @source the relations of the folder `drag`, each with its own source
 * @example
 * dragBreakdown(exampleRocket, { diameter: 0.038 })({ mach: 0.3, reynoldsPerMetre: 7e6, thrusting: false }).base; // 0.1317
 */
export function dragBreakdown(
  rocket: Rocket,
  motor: { readonly diameter: number },
): (state: FlowState) => DragBreakdown {
  const causes = prepareCauses(rocket, motor);
  return ({ mach, reynoldsPerMetre, thrusting }) => ({
    bodyFriction: causes.bodyFriction(mach, reynoldsPerMetre),
    finFriction: causes.finFriction(mach, reynoldsPerMetre),
    finEdges: causes.finEdges(mach),
    nose: causes.nose(mach),
    transitions: causes.transitions(mach),
    base: causes.base(mach, thrusting),
    fittings: causes.fittings(mach),
  });
}

/** Drag coefficient in two shares that add up: the one knows nothing of the Reynolds number, the other nothing of the motor. */
export interface DragShares {
  readonly friction: (mach: number, reynoldsPerMetre: number) => number;
  readonly pressure: (mach: number, thrusting: boolean) => number;
}

/**
 * The sum of `dragBreakdown` in two shares, so that a table over Mach number and height works out each only where it changes.
 *
 * @param motor whose jet fills part of the base under thrust; its diameter [m]
 * @returns friction of body and fins, and the pressure drag of everything, on the circle of the reference diameter
 * @source `dragBreakdown`
 * @example
 * dragShares(exampleRocket, { diameter: 0.038 }).friction(0.3, 7e6); // 0.4233405
 */
export function dragShares(rocket: Rocket, motor: { readonly diameter: number }): DragShares {
  const { bodyFriction, finFriction, finEdges, nose, transitions, base, fittings } = prepareCauses(rocket, motor);
  return {
    friction: (mach, reynoldsPerMetre) => bodyFriction(mach, reynoldsPerMetre) + finFriction(mach, reynoldsPerMetre),
    pressure: (mach, thrusting) =>
      finEdges(mach) + nose(mach) + transitions(mach) + base(mach, thrusting) + fittings(mach),
  };
}

/**
 * Axial drag coefficient of a rocket built up from handbook relations: the sum of `dragBreakdown`.
 *
 * @param motor whose jet fills part of the base under thrust; its diameter [m]
 * @returns coefficient on the circle of the reference diameter, for a state of the flow; finite and positive for Mach 0…5
 * @source `dragBreakdown`
 * @example
 * dragBuildUp(exampleRocket, { diameter: 0.038 })({ mach: 0.3, reynoldsPerMetre: 7e6, thrusting: false }); // 0.6475742
 */
export function dragBuildUp(rocket: Rocket, motor: { readonly diameter: number }): (state: FlowState) => number {
  const { friction, pressure } = dragShares(rocket, motor);
  return ({ mach, reynoldsPerMetre, thrusting }) => friction(mach, reynoldsPerMetre) + pressure(mach, thrusting);
}
