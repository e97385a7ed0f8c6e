import * as z from "zod";
import { fieldFacts, filePath, head, number, quantity, text, yesNo } from "../fields.js";
import { made } from "../made.js";

/** A motor type, as its label and its certification describe it. */
export const motorSchema = made(() => {
  const clock = z
    .enum(["burnout", "ignition"])
    .optional()
    .describe("What starts the real delay: the end of the burn (when left out), or ignition.");
  const charge = quantity("mass", { from: "0 g", to: "100 g", example: "1.0 g" })
    .optional()
    .describe("Mass of the ejection charge that the motor comes with.");
  const wellHolds = quantity("mass", { from: "0 g", to: "100 g", example: "1.4 g" })
    .optional()
    .describe("Most ejection charge that the well holds.");

  const instructions = z
    .strictObject({
      allowCutting: yesNo().describe(
        "True where you have read in the motor's own instructions that its delay may be shortened.",
      ),
      tool: text().optional().describe("The tool that the instructions name for it."),
    })
    .optional()
    .describe("What the motor's own instructions say about shortening the delay.");

  const delay = z
    .union([
      z.strictObject({
        kind: z.literal("adjustable").describe("A delay that can be shortened."),
        longest: quantity("time", { above: "0 s", to: "60 s", example: "14 s" }).describe(
          "Delay of the uncut element.",
        ),
        mostRemoved: quantity("time", { from: "0 s", to: "60 s", example: "8 s" })
          .optional()
          .describe("Most that may be taken out; left out: the maker names no limit."),
        leastLeft: quantity("time", { from: "0 s", to: "60 s", example: "0 s" })
          .optional()
          .describe("Least that must be left; left out: none."),
        depthPerSecond: quantity("length", { above: "0 mm", to: "20 mm", example: "1/32 in" })
          .optional()
          .describe("Depth of the delay grain that burns in one second."),
        clock,
        instructions,
        charge,
        wellHolds,
      }),
      z.strictObject({
        kind: z.literal("fixed").describe("A delay that cannot be changed."),
        seconds: quantity("time", { above: "0 s", to: "60 s", example: "10 s" }).describe("The delay."),
        clock,
        charge,
        wellHolds,
      }),
      z.strictObject({ kind: z.literal("none").describe("No delay and no ejection charge: a plugged motor.") }),
    ])
    .register(fieldFacts, {
      accepted: "an object that describes the delay",
      example: '{ "kind": "adjustable", "longest": "14 s" }',
    });

  const curve = z.strictObject({
    time: z
      .array(number(0, 600, 0.1))
      .min(2)
      .max(20_000)
      .register(fieldFacts, { accepted: "a list of 2 to 20000 times in seconds", example: "[0, 0.1, 1.6, 2.1]" })
      .describe("Times from ignition in seconds, rising."),
    newtons: z
      .array(number(0, 1_000_000, 150))
      .min(2)
      .max(20_000)
      .register(fieldFacts, { accepted: "a list of 2 to 20000 thrusts in newtons", example: "[0, 190, 150, 0]" })
      .describe("Thrust at those times in newtons."),
  });

  return z.strictObject({
    ...head("motor"),
    maker: text().optional().describe("Who makes it."),
    designation: text(60)
      .optional()
      .describe("As printed on the label, for example H150-14; the curve is checked against it."),
    diameter: quantity("length", { above: "0 mm", to: "500 mm", example: "38 mm" }).describe("Outer diameter."),
    length: quantity("length", { above: "0 mm", to: "5 m", example: "205 mm" }).describe("Length of the motor."),
    loadedMass: quantity("mass", { above: "0 g", to: "200 kg", example: "330 g" }).describe("Mass as loaded."),
    propellantMass: quantity("mass", { above: "0 g", to: "200 kg", example: "160 g" }).describe(
      "Mass of the propellant.",
    ),
    thrust: z
      .union([filePath("demo-h150.csv"), curve])
      .register(fieldFacts, {
        accepted: "times and thrusts, or the path of a CSV file",
        example: '{ "time": [0, 0.1, 2], "newtons": [0, 190, 0] }',
      })
      .describe("Thrust over time: two lists, or the relative path of a CSV file with a time and a thrust column."),
    delay: delay.describe("The delay the motor comes with."),
    price: number(0, 1_000_000, 45).optional().describe("Price in your own currency, to order a shortlist by."),
    certified: text().optional().describe("Who certified it."),
    mostLiftOffMass: z
      .union([z.literal("none"), quantity("mass", { above: "0 g", to: "1000 kg", example: "2.8 kg" })])
      .register(fieldFacts, { accepted: 'a mass with its unit, or "none"', example: '"2.8 kg"' })
      .optional()
      .describe("Highest lift-off mass that the maker states, or none where he states none."),
    metalSponge: yesNo().optional().describe("The propellant holds metal that throws sparks."),
    hazards: z.array(text()).max(20).optional().describe("Hazards that the label names, such as sparks."),
  });
});

export type MotorDocument = z.infer<ReturnType<typeof motorSchema>>;
