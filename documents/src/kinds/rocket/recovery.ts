import type { CanopyShape } from "@delaywright/engine";
import * as z from "zod";
import { count, number, quantity, text } from "../fields.js";
import { made } from "../made.js";

const shapes = [
  "flat circular",
  "conical",
  "biconical",
  "triconical",
  "extended skirt 10 %",
  "extended skirt 14.3 %",
  "hemispherical",
  "annular",
  "cross",
  "flat ribbon",
  "conical ribbon",
  "ringslot",
  "ringsail",
  "disk-gap-band",
  "guide surface, ribless",
] as const satisfies readonly CanopyShape[];

/** Some shear pins of one size. */
export const pin = made(() =>
  z.strictObject({
    size: text(20).describe("Thread of the pin, for example 2-56."),
    count: count(1, 20, 2).describe("How many."),
  }),
);

/** How the rocket comes down. */
export const recoverySchema = made(() => {
  const canopy = z.strictObject({
    shape: z.enum(shapes).describe("Type of the canopy."),
    diameter: quantity("length", { above: "0 mm", to: "30 m", example: "1.1 m" }).describe(
      "Nominal diameter: of the circle with the canopy's whole area.",
    ),
    cd: number(0.05, 5, 0.75).optional().describe("Drag coefficient on the nominal area; left out: the handbook's."),
  });
  const strength = quantity("force", { above: "0 N", example: "1.1 kN" });

  return z.strictObject({
    motorCharge: z
      .enum(["primary", "backup"])
      .optional()
      .describe("The motor's charge opens the rocket (when left out), or stands behind electronics."),
    lineStretch: quantity("time", { from: "0 s", to: "10 s", example: "0.5 s" })
      .optional()
      .describe("From the charge's firing to line stretch; left out: 0.5 s."),
    electronics: z
      .strictObject({
        fires: z.literal("apogee").describe("When it fires."),
        delay: quantity("time", { from: "0 s", to: "20 s", example: "0 s" }).optional().describe("How long after it."),
      })
      .optional()
      .describe("Electronics that opens the rocket."),
    drogue: z
      .strictObject({
        canopy: canopy.describe("The canopy."),
        strength: strength.optional().describe("Load that it and its fittings bear."),
      })
      .optional()
      .describe("What opens at the first event; the main then opens at its height."),
    main: z
      .strictObject({
        canopy: canopy.describe("The canopy."),
        strength: strength.optional().describe("Load that the canopy and its fittings bear."),
        opensAt: quantity("length", { above: "0 m", to: "5 km", example: "150 m" })
          .optional()
          .describe("Height of the second event; only with a drogue."),
        spillHole: quantity("length", { from: "0 mm", to: "10 m", example: "100 mm" })
          .optional()
          .describe("Diameter of a hole cut into the canopy beside its usual vent."),
        shearPins: z
          .array(pin())
          .max(10)
          .optional()
          .describe("Shear pins of the joint that stays shut until the main opens; only with a drogue."),
      })
      .describe("The main parachute."),
    harness: z
      .strictObject({
        length: quantity("length", { above: "0 m", to: "200 m", example: "5 m" })
          .optional()
          .describe("Length of the recovery harness."),
        strength: strength.optional().describe("Load that it bears."),
      })
      .optional()
      .describe("The recovery harness."),
    fittingsStrength: strength.optional().describe("Load that the weakest link, bolt or eye bears."),
  });
});
