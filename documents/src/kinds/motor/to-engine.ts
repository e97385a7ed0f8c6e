import type { DelayElement, Motor, MotorCharge } from "@delaywright/engine";
import type { PlacedMotor } from "../../load-plan.js";
import { given, si, siOr } from "../si.js";
import type { MotorDocument } from "./schema.js";

/** A motor in SI units. */
export function motorToEngine({ document, thrust }: Pick<PlacedMotor, "document" | "thrust">): Motor {
  return {
    thrust,
    diameter: si(document.diameter, "length"),
    length: si(document.length, "length"),
    loadedMass: si(document.loadedMass, "mass"),
    propellantMass: si(document.propellantMass, "mass"),
    delay: delayToEngine(document.delay),
    ...given("designation", document.designation),
  };
}

/**
 * The motor's ejection charge in SI units.
 *
 * @param instead what the flyer puts into the well instead of it [kg]
 */
export function chargeToEngine({ delay }: MotorDocument, instead?: number): MotorCharge | undefined {
  if (delay.kind === "none") return undefined;
  return {
    ...given("mass", instead ?? siOr(delay.charge, "mass", undefined)),
    ...given("wellHolds", siOr(delay.wellHolds, "mass", undefined)),
  };
}

function delayToEngine(delay: MotorDocument["delay"]): DelayElement {
  if (delay.kind === "none") return { kind: "none" };
  const clock = delay.clock ?? "burnout";
  if (delay.kind === "fixed") return { kind: "fixed", seconds: si(delay.seconds, "time"), clock };
  return {
    kind: "adjustable",
    longest: si(delay.longest, "time"),
    mostRemoved: siOr(delay.mostRemoved, "time", Number.POSITIVE_INFINITY),
    leastLeft: siOr(delay.leastLeft, "time", 0),
    ...given("depthPerSecond", siOr(delay.depthPerSecond, "length", undefined)),
    clock,
    cuttingConfirmed: delay.instructions?.allowCutting === true,
    ...given("toolNamed", delay.instructions?.tool),
  };
}
