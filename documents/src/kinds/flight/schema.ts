import * as z from "zod";
import { count, fieldFacts, filePath, head, moment, text } from "../fields.js";
import { logSchema } from "../log/schema.js";
import { made } from "../made.js";
import { motorInHandSchema } from "../motor-in-hand/schema.js";
import { planSchema } from "../plan/schema.js";
import { findingsSchema, forecastSchema } from "./findings.js";

/** A flight as it was flown. */
export const flightSchema = made(() => {
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

  const exclusion = z.strictObject({
    reason: text(2000).describe("Why nothing is learned from it."),
    when: moment().optional().describe("When it was left out."),
  });

  return z.strictObject({
    ...head("flight"),
    plan: z
      .union([filePath("third-flight.plan.json"), planSchema()])
      .register(fieldFacts, {
        accepted: "a plan document, or the path of its file",
        example: '"third-flight.plan.json"',
      })
      .describe("The plan as flown: its document, or the relative path of its file."),
    planFile: text()
      .optional()
      .describe("The file of the plan that it was flown by, where the plan as flown stands inside."),
    motorInHand: z
      .union([filePath("bag-3.motor.json"), motorInHandSchema()])
      .register(fieldFacts, { accepted: "a motor in hand, or the path of its file", example: '"bag-3.motor.json"' })
      .optional()
      .describe("The motor that flew."),
    flown: moment().optional().describe("When it flew."),
    signOffs: z
      .array(signOff)
      .max(2000)
      .optional()
      .describe(
        "What was signed on the prep sheet and what was taken back, oldest first. Entries are only ever added.",
      ),
    log: z
      .union([filePath("third-flight.log.json"), logSchema()])
      .register(fieldFacts, { accepted: "a log document, or the path of its file", example: '"third-flight.log.json"' })
      .optional()
      .describe("The altimeter's record."),
    logFlight: count(1, 100, 1).optional().describe("Which flight of the record, from 1; left out: the first."),
    forecast: forecastSchema().optional().describe("What was foretold for it, at the delay as cut."),
    findings: findingsSchema().optional().describe("What was found out. Learning reads this alone."),
    excluded: exclusion.optional().describe("Nothing is learned from it, and why."),
  });
});

export type FlightDocument = z.infer<ReturnType<typeof flightSchema>>;
