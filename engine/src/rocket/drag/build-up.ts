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

interface FlowDrag {
  readonly friction: number;
  readonly edges: number;
}

const ratio = (length: number, roughness: number) => (roughness > 0 ? length / roughness : Number.POSITIVE_INFINITY);

function prepareFins(rocket: Rocket, fins: FinSet): (state: FlowState) => FlowDrag {
  const planform = finPlanform(fins.shape);
  const reference = referenceArea(rocket.diameter);
  const thicknessRatio = fins.thickness / planform.meanChord;
  const wetted = (2 * fins.count * planform.area * finFormFactor(thicknessRatio)) / reference;
  const frontal = (fins.count * planform.span * fins.thickness) / reference;
  const wave = thicknessWaveDrag(thicknessRatio);
  const sharpArea = fins.leadingEdge === "sharp" ? (fins.count * planform.area) / reference : 0;
  const roughnessRatio = ratio(planform.meanChord, rocket.roughness);
  return ({ mach, reynoldsPerMetre }) => ({
    friction: wetted * skinFriction({ reynolds: reynoldsPerMetre * planform.meanChord, mach, roughnessRatio }),
    edges:
      frontal *
        (leadingEdgeDrag(fins.leadingEdge, planform.leadingSweep, mach) + trailingEdgeDrag(fins.trailingEdge, mach)) +
      sharpArea * wave(mach),
  });
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
  const { diameter, length, roughness } = rocket;
  const bodyWetted = (bodyWettedArea(rocket) * bodyFormFactor(bodyFineness(rocket))) / referenceArea(diameter);
  const bodyRatio = ratio(length, roughness);
  const finSets = rocket.finSets.map((fins) => prepareFins(rocket, fins));
  const nose = noseDrag(rocket.nose, diameter);
  const transitions = bodyStretches(rocket)
    .filter((stretch) => stretch.kind === "transition")
    .map((stretch) => transitionDrag(stretch, diameter));
  const aft = baseDiameter(rocket);
  return (state) => {
    const { mach, reynoldsPerMetre, thrusting } = state;
    let finFriction = 0;
    let finEdges = 0;
    for (const fins of finSets) {
      const { friction, edges } = fins(state);
      finFriction += friction;
      finEdges += edges;
    }
    return {
      bodyFriction: bodyWetted * skinFriction({ reynolds: reynoldsPerMetre * length, mach, roughnessRatio: bodyRatio }),
      finFriction,
      finEdges,
      nose: nose(mach),
      transitions: transitions.reduce((sum, drag) => sum + drag(mach), 0),
      base: baseDrag({ mach, thrusting, baseDiameter: aft, motorDiameter: motor.diameter, diameter }),
      fittings: rocket.fittings.reduce((sum, fitting) => sum + fittingDrag(fitting, diameter, mach), 0),
    };
  };
}

/**
 * Axial drag coefficient of a rocket built up from handbook relations: the sum of `dragBreakdown`.
 *
 * @param motor whose jet fills part of the base under thrust; its diameter [m]
 * @returns coefficient on the circle of the reference diameter, for a state of the flow; finite and positive for Mach 0…5
 * @source `dragBreakdown`
 * @example
 * dragBuildUp(exampleRocket, { diameter: 0.038 })({ mach: 0.3, reynoldsPerMetre: 7e6, thrusting: false }); // 0.63
 */
export function dragBuildUp(rocket: Rocket, motor: { readonly diameter: number }): (state: FlowState) => number {
  const breakdown = dragBreakdown(rocket, motor);
  return (state) => {
    const parts = breakdown(state);
    return (
      parts.bodyFriction +
      parts.finFriction +
      parts.finEdges +
      parts.nose +
      parts.transitions +
      parts.base +
      parts.fittings
    );
  };
}
