import type { DelayElement, Motor } from "@delaywright/engine";
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
