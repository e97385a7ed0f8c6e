import * as z from "zod";
import { fieldFacts, number, quantity } from "../fields.js";
import { made } from "../made.js";

/** One sigma of every uncertain input, or none. */
export const spreadSchema = made(() => {
  const factor = (what: string) => number(0, 2, 0.1).optional().describe(`${what}: factor exp(sigma z).`);

  const values = z.strictObject({
    dragScale: factor("Drag"),
    totalImpulse: factor("Thrust, at fixed propellant mass"),
    burnTime: factor("Times of the burn, at constant impulse"),
    mass: factor("Mass without motor"),
    inertia: factor("Transverse inertia"),
    windSpeed: factor("Wind speed"),
    windFrom: quantity("angle", { from: "0 deg", to: "180 deg", example: "15 deg" })
      .optional()
      .describe("Added to the wind's direction."),
    windExponent: number(0, 1, 0.05).optional().describe("Added to the exponent of the wind profile."),
    windFloor: quantity("speed", { from: "0 m/s", to: "20 m/s", example: "0.7 m/s" })
      .optional()
      .describe("Added to each horizontal component of the wind."),
    balance: quantity("length", { from: "0 mm", to: "1 m", example: "5 mm" })
      .optional()
      .describe("Added to the balance point."),
    temperature: quantity("temperatureDifference", { from: "0 degC", to: "50 degC", example: "2 degC" })
      .optional()
      .describe("Added to the air temperature."),
    guideTilt: quantity("angle", { from: "0 deg", to: "30 deg", example: "1 deg" })
      .optional()
      .describe("Lean of the guide about each of two horizontal axes."),
    delay: z
      .strictObject({
        seconds: quantity("time", { from: "0 s", to: "20 s", example: "0.75 s" })
          .optional()
          .describe("Scatter in seconds."),
        fraction: number(0, 1, 0.1).optional().describe("Scatter as a fraction of the delay as cut."),
      })
      .optional()
      .describe("Scatter of the delay: the greater of the two."),
    cutDepth: quantity("length", { from: "0 mm", to: "20 mm", example: "0.2 mm" })
      .optional()
      .describe("Depth that a cut really gets; left out: the tool's."),
  });

  return z
    .union([z.literal("none"), values])
    .register(fieldFacts, { accepted: '"none", or an object with one-sigma values', example: '{ "dragScale": 0.08 }' });
});
