import {
  type DragSource,
  estimateInertia,
  type FinSet,
  type FinShape,
  type InertiaSource,
  inertiaFromSwing,
  type NoseShape,
  type Recovery,
  type Rocket,
  type StatedPacking,
  type ThrustLine,
  withoutMotor,
} from "@delaywright/engine";
import { defaultRocket } from "../../defaults.js";
import type { MotorDocument } from "../motor/schema.js";
import { given, si, siOr } from "../si.js";
import type { RocketDocument } from "./schema.js";

/** What a rocket needs beside its own document. */
export interface RocketSurroundings {
  /** The motor named in `readyWith`. */
  readonly readyWith?: MotorDocument | undefined;
  /** [m/s²], for a swing on two strings. */
  readonly gravity: number;
}

/** A rocket in SI units; its inertia is estimated where none was measured. */
export function rocketToEngine(rocket: RocketDocument, { readyWith, gravity }: RocketSurroundings): Rocket {
  const length = si(rocket.length, "length");
  const diameter = si(rocket.diameter, "length");
  const { mass, balance } = massOf(rocket, readyWith);
  const { mount } = rocket;
  return {
    diameter,
    length,
    mass,
    balance,
    ...inertiaOf(rocket, { mass, balance, length, diameter, gravity }),
    ...given("rollInertia", siOr(rocket.rollInertiaWithoutMotor, "inertia", undefined)),
    nose: { shape: noseShape(rocket.nose), length: si(rocket.nose.length, "length") },
    transitions: (rocket.sections ?? []).map((section) => ({
      at: si(section.at, "length"),
      length: si(section.length, "length"),
      aftDiameter: si(section.aftDiameter, "length"),
    })),
    finSets: (rocket.fins ?? []).map(finSet),
    fittings: (rocket.fittings ?? []).map(({ kind, at }) => ({ kind, at: si(at, "length") })),
    roughness: siOr(rocket.roughness, "length", defaultRocket.roughness),
    mount: {
      diameter: si(mount.diameter, "length"),
      motorAftAt: si(mount.motorAftAt, "length"),
      ...given("length", siOr(mount.length, "length", undefined)),
      ...given("retention", mount.retention),
      ...given("thrustLine", mount.thrustLine && thrustLine(mount.thrustLine)),
    },
    drag: dragSource(rocket.drag),
    ...given("statedCp", siOr(rocket.statedCp, "length", undefined)),
  };
}

function massOf(rocket: RocketDocument, readyWith: MotorDocument | undefined): { mass: number; balance: number } {
  const { massReady, balanceReady } = rocket;
  if (massReady === undefined || balanceReady === undefined || readyWith === undefined) {
    return { mass: si(rocket.massWithoutMotor ?? "", "mass"), balance: si(rocket.balanceWithoutMotor ?? "", "length") };
  }
  return withoutMotor({
    massReady: si(massReady, "mass"),
    balanceReady: si(balanceReady, "length"),
    motor: {
      loadedMass: si(readyWith.loadedMass, "mass"),
      length: si(readyWith.length, "length"),
      aftAt: si(rocket.mount.motorAftAt, "length"),
    },
  });
}

function inertiaOf(
  rocket: RocketDocument,
  known: { mass: number; balance: number; length: number; diameter: number; gravity: number },
): { inertia: number; inertiaSource: InertiaSource } {
  const { inertiaWithoutMotor: measured } = rocket;
  if (measured === undefined) return { inertia: estimateInertia(known), inertiaSource: "estimated" };
  if (typeof measured === "string") return { inertia: si(measured, "inertia"), inertiaSource: "given" };
  const { strings, apart, period } = measured.swing;
  const swing = { strings: si(strings, "length"), apart: si(apart, "length"), period: si(period, "time") };
  return { inertia: inertiaFromSwing({ ...known, ...swing }), inertiaSource: "swing" };
}

function noseShape(nose: RocketDocument["nose"]): NoseShape {
  if (nose.shape === "haack") return { kind: "haack", c: nose.c ?? 0 };
  if (nose.shape === "power") return { kind: "power", exponent: nose.exponent ?? 1 };
  return { kind: nose.shape };
}

function thrustLine({ angle, offset, toward }: NonNullable<RocketDocument["mount"]["thrustLine"]>): ThrustLine {
  return {
    angle: siOr(angle, "angle", 0),
    offset: siOr(offset, "length", 0),
    toward: siOr(toward, "angle", 0),
  };
}

type Fins = NonNullable<RocketDocument["fins"]>[number];

function finSet(fins: Fins): FinSet {
  return {
    shape: finShape(fins),
    count: fins.count,
    at: si(fins.at, "length"),
    thickness: si(fins.thickness, "length"),
    leadingEdge: fins.leadingEdge ?? "round",
    trailingEdge: fins.trailingEdge ?? "square",
    ...given("cant", siOr(fins.cant, "angle", undefined)),
  };
}

function finShape(fins: Fins): FinShape {
  if (fins.shape === "polygon") {
    return { kind: "polygon", points: fins.points.map(([x, y]) => [si(x, "length"), si(y, "length")] as const) };
  }
  const [root, span] = [si(fins.root, "length"), si(fins.span, "length")];
  if (fins.shape === "ellipse") return { kind: "ellipse", root, span };
  return { kind: "trapezoid", root, tip: si(fins.tip, "length"), span, sweep: si(fins.sweep, "length") };
}

function dragSource(drag: RocketDocument["drag"]): DragSource {
  const scale = drag?.scale ?? 1;
  if (drag === undefined || drag.from === "build-up") return { from: "build-up", scale };
  if (drag.from === "constant") return { from: "constant", cd: drag.cd, scale };
  const { mach, coasting, thrusting } = drag;
  return { from: "table", mach, coasting, thrusting, scale };
}

/** How the rocket is packed, as far as its document says, in SI units. */
export function packingToEngine(rocket: RocketDocument): StatedPacking {
  const { bay, electronicsBay, recovery, sectionMasses } = rocket;
  return {
    ...given(
      "bay",
      bay && {
        ...baySize(bay),
        ...given("pins", bay.shearPins),
        ...given("pressure", siOr(bay.pressure, "pressure", undefined)),
        ...given("friction", siOr(bay.friction, "force", undefined)),
      },
    ),
    ...given("electronicsBay", electronicsBay && baySize(electronicsBay)),
    ...given("fittingsStrength", siOr(recovery.fittingsStrength, "force", undefined)),
    ...given("stillShut", recovery.main.shearPins),
    ...given("spillHole", siOr(recovery.main.spillHole, "length", undefined)),
    ...given(
      "sections",
      sectionMasses?.map((mass) => si(mass, "mass")),
    ),
  };
}

function baySize({ diameter, length }: { readonly diameter: string; readonly length: string }) {
  return { diameter: si(diameter, "length"), length: si(length, "length") };
}

/** How the rocket comes down, in SI units. */
export function recoveryToEngine({ recovery }: RocketDocument): Recovery {
  const { electronics, drogue, main, harness } = recovery;
  return {
    motorCharge: recovery.motorCharge ?? "primary",
    lineStretch: siOr(recovery.lineStretch, "time", defaultRocket.lineStretch),
    ...given("electronics", electronics && { fires: electronics.fires, delay: siOr(electronics.delay, "time", 0) }),
    ...given("drogue", drogue && { canopy: canopy(drogue.canopy), ...strength(drogue.strength) }),
    main: {
      canopy: canopy(main.canopy),
      ...strength(main.strength),
      ...given("opensAt", siOr(main.opensAt, "length", undefined)),
    },
    ...given(
      "harness",
      harness && { ...given("length", siOr(harness.length, "length", undefined)), ...strength(harness.strength) },
    ),
  };
}

function canopy({ shape, diameter, cd }: RocketDocument["recovery"]["main"]["canopy"]): Recovery["main"]["canopy"] {
  return { shape, diameter: si(diameter, "length"), ...given("cd", cd) };
}

function strength(text: string | undefined): { readonly strength?: number } {
  return given("strength", siOr(text, "force", undefined));
}
