import type { LoadedNode } from "../load.js";
import { type PlanParts, partsOf, placed, placedMotor } from "../load-plan.js";

/**
 * The plan as flown of a loaded flight: its plan, on the motor in hand that the flight names beside it.
 *
 * @returns undefined where a part of the plan is missing or has issues
 */
export function flownParts(flight: LoadedNode): PlanParts | undefined {
  const plan = flight.children["plan"];
  const parts = plan === undefined ? undefined : partsOf(plan);
  const own = flight.children["motorInHand"];
  const motorInHand = placed(own, "motor-in-hand");
  if (parts === undefined || motorInHand === undefined) return parts;
  const motor = placedMotor(own?.children["type"]) ?? parts.motor;
  return { ...parts, motor, motorInHand };
}
