import * as z from "zod";
import { fieldFacts, filePath, head, moment, quantity, text } from "../fields.js";
import { logSchema } from "../log/schema.js";
import { motorInHandSchema } from "../motor-in-hand/schema.js";
import { planSchema } from "../plan/schema.js";

/** A flight as it was flown. */
export const flightSchema = z.strictObject({
  ...head("flight"),
  plan: z
    .union([filePath("third-flight.plan.json"), planSchema])
    .register(fieldFacts, { accepted: "a plan document, or the path of its file", example: '"third-flight.plan.json"' })
    .describe("The plan as flown: its document, or the relative path of its file."),
  motorInHand: z
    .union([filePath("bag-3.motor.json"), motorInHandSchema])
    .register(fieldFacts, { accepted: "a motor in hand, or the path of its file", example: '"bag-3.motor.json"' })
    .optional()
    .describe("The motor that flew."),
  flown: moment().optional().describe("When it flew."),
  signOffs: z
    .array(
      z.strictObject({
        step: text().describe("What was done."),
        by: text().describe("Who signed."),
        when: moment().optional().describe("When."),
      }),
    )
    .max(200)
    .optional()
    .describe("Sign-offs of the prep sheet."),
  log: z
    .union([filePath("third-flight.log.json"), logSchema])
    .register(fieldFacts, { accepted: "a log document, or the path of its file", example: '"third-flight.log.json"' })
    .optional()
    .describe("The altimeter's record."),
  findings: z
    .strictObject({
      set: quantity("time", { from: "0 s", to: "60 s", example: "10 s" }).optional().describe("Delay as cut."),
      delay: quantity("time", { from: "0 s", to: "120 s", example: "10.4 s" }).optional().describe("Delay as flown."),
      coast: quantity("time", { from: "0 s", to: "300 s", example: "9.8 s" }).optional().describe("Coast as flown."),
      apogee: quantity("length", { from: "0 m", to: "100 km", example: "640 m" })
        .optional()
        .describe("Height of the apogee."),
      outcome: z.enum(["clean", "fast", "low", "grounded"]).optional().describe("How it opened."),
    })
    .optional()
    .describe("What was found out."),
});

export type FlightDocument = z.infer<typeof flightSchema>;
