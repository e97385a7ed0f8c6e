import * as z from "zod";
import { fieldSchema } from "../field/schema.js";
import { day, fieldFacts, filePath, head, number, quantity, text } from "../fields.js";
import { flyerSchema } from "../flyer/schema.js";
import { made } from "../made.js";
import { motorSchema } from "../motor/schema.js";
import { motorInHandSchema } from "../motor-in-hand/schema.js";
import { rocketSchema } from "../rocket/schema.js";
import { ruleSetSchema } from "../rule-set/schema.js";
import { toolSchema } from "../tool/schema.js";
import { learnedSchema } from "./learned.js";
import { packingSchema, siteSchema } from "./site.js";
import { spreadSchema } from "./spread.js";
import { weatherRangeSchema, weatherSchema } from "./weather.js";

/** One flight to be made: this rocket, this motor, this field, this weather. */
export const planSchema = made(() => {
  const azimuth = quantity("angle", { from: "-360 deg", to: "360 deg", example: "240 deg" });
  const length = (example: string) => quantity("length", { above: "0 m", to: "50 m", example });

  return z.strictObject({
    ...head("plan"),
    date: day().optional().describe("Day of the flight."),
    rocket: z
      .union([filePath("demo.rocket.json"), rocketSchema()])
      .register(fieldFacts, { accepted: "a rocket document, or the path of its file", example: '"demo.rocket.json"' })
      .describe("The rocket: its document, or the relative path of its file."),
    motor: z
      .union([filePath("demo-h150.motor.json"), motorSchema(), motorInHandSchema()])
      .register(fieldFacts, {
        accepted: "a motor or a motor in hand, or the path of its file",
        example: '"demo-h150.motor.json"',
      })
      .describe("The motor type or the motor in hand: its document, or the relative path of its file."),
    tool: z
      .union([filePath("two-collar.tool.json"), toolSchema()])
      .register(fieldFacts, { accepted: "a tool document, or the path of its file", example: '"two-collar.tool.json"' })
      .optional()
      .describe("The cutting tool; without it no cut is planned."),
    field: z
      .union([filePath("larkmoor.field.json"), fieldSchema()])
      .register(fieldFacts, { accepted: "a field document, or the path of its file", example: '"larkmoor.field.json"' })
      .optional()
      .describe("The field; left out: sea level at 45 degrees."),
    flyer: z
      .union([filePath("me.flyer.json"), flyerSchema()])
      .register(fieldFacts, { accepted: "a flyer document, or the path of its file", example: '"me.flyer.json"' })
      .optional()
      .describe("The flyer: the document, or the relative path of its file."),
    weather: weatherSchema().optional().describe("The weather at the field."),
    weatherRange: weatherRangeSchema().optional().describe("The weather that a cut at home must leave room for."),
    guide: z
      .strictObject({
        travel: quantity("length", { above: "0 m", to: "50 m", example: "1.8 m" })
          .optional()
          .describe("Way along the guide until the rocket is free."),
        rail: length("2.4 m").optional().describe("Length of the rail or rod, instead of travel."),
        stop: quantity("length", { from: "0 mm", to: "50 m", example: "150 mm" })
          .optional()
          .describe("Height of the stop above the rail's lower end."),
        tilt: quantity("angle", { from: "0 deg", to: "60 deg", example: "0 deg" })
          .optional()
          .describe("Lean from the vertical."),
        toward: azimuth.optional().describe("Azimuth it leans towards, degrees true."),
      })
      .register(fieldFacts, { accepted: "travel, or rail and stop", example: '{ "travel": "1.8 m" }' })
      .describe("The launch guide: travel, or rail and stop."),
    ballast: z
      .strictObject({
        mass: quantity("mass", { from: "0 g", to: "100 kg", example: "50 g" }).describe("Mass of the ballast."),
        at: quantity("length", { from: "0 mm", to: "50 m", example: "200 mm" }).describe(
          "Where it is fixed, from the nose tip.",
        ),
      })
      .optional()
      .describe("A mass fixed to the airframe for this flight."),
    limits: z
      .strictObject({
        openingSpeed: quantity("speed", { above: "0 m/s", to: "200 m/s", example: "20 m/s" })
          .optional()
          .describe("Highest airspeed of a clean opening."),
        openingHeight: quantity("length", { from: "0 m", to: "5 km", example: "100 m" })
          .optional()
          .describe("Least height of a clean opening."),
        leastClean: number(0, 1, 0.8).optional().describe("Least odds of a clean opening."),
        leastHolds: number(0, 1, 0.99).optional().describe("Least odds that the recovery holds."),
      })
      .optional()
      .describe("What a clean opening is, and which odds are enough."),
    choice: z
      .strictObject({
        delay: quantity("time", { from: "0 s", to: "60 s", example: "9 s" }).describe("The delay that you choose."),
        reason: text(500).optional().describe("Why."),
      })
      .optional()
      .describe("Your own setting, which stands beside the suggestion."),
    site: siteSchema().optional().describe("What the rules ask of the day at the field."),
    packing: packingSchema().optional().describe("What you want of the packing."),
    ruleSet: z
      .union([z.enum(["association", "none"]), filePath("club.rule-set.json"), ruleSetSchema()])
      .register(fieldFacts, {
        accepted: '"association", "none", a rule set, or the path of its file',
        example: '"club.rule-set.json"',
      })
      .optional()
      .describe(
        "The rules that it is held against: the association's codes with the aviation rule (when left out), none but physics and own defaults, or a club's rule set: its document, or the relative path of its file.",
      ),
    spread: spreadSchema().optional().describe("One sigma of every uncertain input; what is left out has its default."),
    learned: learnedSchema()
      .optional()
      .describe("What past flights taught, accepted for this plan: it is reckoned with."),
  });
});

export type PlanDocument = z.infer<ReturnType<typeof planSchema>>;
