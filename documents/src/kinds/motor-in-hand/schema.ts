import * as z from "zod";
import { fieldFacts, filePath, head, moment, quantity, text } from "../fields.js";
import { made } from "../made.js";
import { motorSchema } from "../motor/schema.js";

/** One physical motor. A cut belongs to it, not to a plan. */
export const motorInHandSchema = made(() => {
  const depth = { from: "0 mm", to: "500 mm", example: "22.2 mm" };

  const reading = z.strictObject({
    when: moment().describe("When it was read."),
    before: quantity("length", depth)
      .optional()
      .describe("Depth from the rim to the grain's face before the cut; left out: the first that was read."),
    after: quantity("length", { ...depth, example: "24.6 mm" })
      .optional()
      .describe("Depth from the rim to the grain's face after the cut."),
    end: text(60).optional().describe("The end of the tool that was used."),
    spacers: z.array(text(60)).max(20).optional().describe("The spacers that were on the tool."),
    note: z.string().max(2000).optional().describe("A correction gives its reason here."),
  });

  return z.strictObject({
    ...head("motor-in-hand"),
    type: z
      .union([filePath("demo-h150.motor.json"), motorSchema()])
      .register(fieldFacts, {
        accepted: "a motor document, or the path of its file",
        example: '"demo-h150.motor.json"',
      })
      .describe("The motor type: its document, or the relative path of its file."),
    label: text().optional().describe("What you wrote on this motor."),
    lot: text().optional().describe("Lot, as printed on the label."),
    made: text(40).optional().describe("When it was made, for example 2025-03."),
    stored: text().optional().describe("How it was stored."),
    readings: z.array(reading).max(1000).optional().describe("Depth readings, oldest first. They are only ever added."),
  });
});

export type MotorInHandDocument = z.infer<ReturnType<typeof motorInHandSchema>>;
