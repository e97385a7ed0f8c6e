import * as z from "zod";
import { fieldFacts, filePath, head, number, quantity } from "../fields.js";
import { made } from "../made.js";
import { motorSchema } from "../motor/schema.js";
import { finsSchema } from "./fins.js";
import { pin, recoverySchema } from "./recovery.js";

/** One rocket, as it was measured. */
export const rocketSchema = made(() => {
  const along = (example: string) => quantity("length", { from: "0 mm", to: "50 m", example });
  const size = (example: string) => quantity("length", { above: "0 mm", to: "50 m", example });
  const mass = quantity("mass", { above: "0 g", to: "1000 kg", example: "1.95 kg" });

  const swing = z.strictObject({
    swing: z
      .strictObject({
        strings: size("1.2 m").describe("Length of the two strings."),
        apart: size("0.8 m").describe("How far apart they hang, half of it on each side of the balance point."),
        period: quantity("time", { above: "0 s", to: "60 s", example: "1.9 s" }).describe(
          "Time of one whole swing to and fro about the vertical.",
        ),
      })
      .describe("Hung level on two equal strings and turned a little: what was measured."),
  });

  const drag = z
    .union([
      z.strictObject({
        from: z.literal("build-up").describe("Built up from the shape."),
        scale: number(0.2, 5, 1).optional().describe("Multiplies it; what flights taught."),
      }),
      z.strictObject({
        from: z.literal("constant").describe("One coefficient."),
        cd: number(0.01, 5, 0.52).describe("The drag coefficient."),
        scale: number(0.2, 5, 1).optional().describe("Multiplies it."),
      }),
      z.strictObject({
        from: z.literal("table").describe("Coefficients over Mach number."),
        mach: z
          .array(number(0, 10, 0.5))
          .min(1)
          .max(1000)
          .describe("Mach numbers, rising."),
        coasting: z
          .array(number(0.001, 5, 0.5))
          .min(1)
          .max(1000)
          .describe("Drag coefficients without thrust."),
        thrusting: z
          .array(number(0.001, 5, 0.45))
          .min(1)
          .max(1000)
          .describe("Drag coefficients under thrust."),
        scale: number(0.2, 5, 1).optional().describe("Multiplies it."),
      }),
    ])
    .register(fieldFacts, {
      accepted: "an object that says where the drag comes from",
      example: '{ "from": "build-up" }',
    });

  return z.strictObject({
    ...head("rocket"),
    diameter: size("76 mm").describe("Diameter at the nose's base: the reference of areas and calibres."),
    length: size("1.52 m").describe("From the nose tip to the aft end of the tube."),
    massWithoutMotor: mass.optional().describe("Mass ready to fly, but without motor."),
    balanceWithoutMotor: along("0.86 m").optional().describe("Balance point without motor, from the nose tip."),
    massReady: mass.optional().describe("Mass with the motor named in readyWith, instead of massWithoutMotor."),
    balanceReady: along("0.98 m").optional().describe("Balance point with that motor, from the nose tip."),
    readyWith: z
      .union([filePath("demo-h150.motor.json"), motorSchema()])
      .register(fieldFacts, {
        accepted: "a motor document, or the path of its file",
        example: '"demo-h150.motor.json"',
      })
      .optional()
      .describe("The motor that was in the rocket when massReady and balanceReady were measured."),
    inertiaWithoutMotor: z
      .union([quantity("inertia", { above: "0 kg m2", to: "10000 kg m2" }), swing])
      .register(fieldFacts, {
        accepted: "a moment of inertia with its unit, or what a swing on two strings gave",
        example: '"0.36 kg m2"',
      })
      .optional()
      .describe("Transverse moment of inertia about the balance point without motor; left out: estimated."),
    rollInertiaWithoutMotor: quantity("inertia", { above: "0 kg m2", to: "1000 kg m2", example: "0.003 kg m2" })
      .optional()
      .describe("Moment of inertia about the axis without motor; left out: estimated."),
    nose: z
      .strictObject({
        shape: z.enum(["cone", "ogive", "parabola", "ellipsoid", "haack", "power"]).describe("Profile of the nose."),
        length: size("300 mm").describe("Length of the nose."),
        c: number(0, 0.66, 0).optional().describe("Of a haack nose: 0 is von Karman."),
        exponent: number(0.05, 1, 0.5).optional().describe("Of a power nose: 1 is a cone."),
      })
      .register(fieldFacts, { accepted: "the nose", example: '{ "shape": "ogive", "length": "300 mm" }' })
      .describe("The nose."),
    sections: z
      .array(
        z.strictObject({
          shape: z.literal("transition").describe("A conical change of diameter."),
          at: along("1.45 m").describe("Where it starts, from the nose tip."),
          length: size("70 mm").describe("Its length."),
          aftDiameter: size("60 mm").describe("Diameter at its aft end, which the tube keeps from there on."),
        }),
      )
      .max(20)
      .optional()
      .describe("Changes of diameter, from the nose on."),
    fins: z.array(finsSchema()).max(10).optional().describe("Rings of fins."),
    fittings: z
      .array(
        z.strictObject({
          kind: z.enum(["rail button", "launch lug", "rail guide"]).describe("What runs on the guide."),
          at: along("0.95 m").describe("From the nose tip."),
        }),
      )
      .max(20)
      .optional()
      .describe("What runs on the launch guide."),
    roughness: quantity("length", { from: "0 um", to: "2 mm", example: "20 um" })
      .optional()
      .describe("Surface roughness; left out: 20 um."),
    mount: z
      .strictObject({
        diameter: size("38 mm").describe("Inner diameter of the motor mount."),
        motorAftAt: along("1.53 m").describe("Where the motor's aft end sits, from the nose tip."),
        length: size("320 mm").optional().describe("Length of the mount."),
        retention: z.enum(["positive", "friction", "none"]).optional().describe("What keeps the motor in."),
        thrustLine: z
          .strictObject({
            angle: quantity("angle", { from: "0 deg", to: "5 deg", example: "0.2 deg" })
              .optional()
              .describe("Between the thrust and the axis; left out: 0 deg."),
            offset: quantity("length", { from: "0 mm", to: "50 mm", example: "0.5 mm" })
              .optional()
              .describe("Between the axis and the thrust at the motor's aft end; left out: 0 mm."),
            toward: quantity("angle", { from: "-360 deg", to: "360 deg", example: "90 deg" })
              .optional()
              .describe("Azimuth to which both point while the rocket stands on the pad; left out: 0 deg."),
          })
          .register(fieldFacts, {
            accepted: "how the thrust misses the axis",
            example: '{ "angle": "0.2 deg", "toward": "90 deg" }',
          })
          .optional()
          .describe("How the thrust misses the axis, where it was measured; left out: along the axis."),
      })
      .register(fieldFacts, { accepted: "the motor mount", example: '{ "diameter": "38 mm", "motorAftAt": "1.53 m" }' })
      .describe("The motor mount."),
    drag: drag.optional().describe("Where the drag comes from; left out: built up from the shape."),
    bay: z
      .strictObject({
        diameter: size("72 mm").describe("Inner diameter."),
        length: size("250 mm").describe("Free length that the charge fills."),
        shearPins: z.array(pin()).max(10).optional().describe("Shear pins that hold it shut."),
        pressure: quantity("pressure", { above: "0 psi", to: "200 psi", example: "15 psi" })
          .optional()
          .describe("Pressure that the charge should make."),
        friction: quantity("force", { from: "0 N", to: "100 kN", example: "20 N" })
          .optional()
          .describe("Force that pulls the joint apart without its pins."),
      })
      .optional()
      .describe("The bay that the ejection charge opens."),
    electronicsBay: z
      .strictObject({
        diameter: size("72 mm").describe("Inner diameter."),
        length: size("150 mm").describe("Length inside."),
      })
      .optional()
      .describe("The bay that an altimeter sits in; its static ports are for this volume."),
    materials: z
      .enum(["light", "other"])
      .optional()
      .describe("light: paper, wood or breakable plastic without substantial metal parts."),
    sectionMasses: z
      .array(mass)
      .min(1)
      .max(10)
      .register(fieldFacts, { accepted: "masses with their units", example: '["1.2 kg", "0.9 kg"]' })
      .optional()
      .describe(
        "Masses of the tethered sections as they land, the burnt-out motor with its own; left out: the whole as one.",
      ),
    recovery: recoverySchema()
      .register(fieldFacts, {
        accepted: "how it comes down",
        example: '{ "main": { "canopy": { "shape": "hemispherical", "diameter": "1.1 m" } } }',
      })
      .describe("How it comes down."),
    statedCp: along("1.18 m")
      .optional()
      .describe("Centre of pressure as somebody stated it, from the nose tip; replaces the computed one."),
  });
});

export type RocketDocument = z.infer<ReturnType<typeof rocketSchema>>;
