import * as z from "zod";
import { fieldFacts, filePath, head, moment, quantity, text } from "../fields.js";
import { logSchema } from "../log/schema.js";
import { motorInHandSchema } from "../motor-in-hand/schema.js";
import { planSchema } from "../plan/schema.js";

const signOff = z.strictObject({
  what: z
    .enum(["sign", "unsign", "scrub", "misfire"])
    .optional()
    .describe(
      "A step signed (when left out), a signature taken back, the flight called off, or a motor that did not light.",
    ),
  step: text().optional().describe("The step that was signed or taken back, for example igniter."),
  by: text().describe("Who signed."),
  when: moment().optional().describe("When."),
  restsOn: text(100).optional().describe("What it rested on, in short: the tool's own mark."),
  reason: text(2000).optional().describe("Why it was taken back, called off, or what was seen."),
});

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
    .array(signOff)
    .max(2000)
    .optional()
    .describe("What was signed on the prep sheet and what was taken back, oldest first. Entries are only ever added."),
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
