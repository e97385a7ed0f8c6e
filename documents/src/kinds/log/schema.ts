import * as z from "zod";
import { count, fieldFacts, filePath, head, text } from "../fields.js";

const column = z
  .strictObject({
    column: z
      .union([text(200), count(1, 500, 1)])
      .register(fieldFacts, { accepted: "the heading of a column, or its number from 1", example: '"Height (m)"' })
      .describe("Heading of the column, or its number from 1."),
    unit: text(20).optional().describe("Unit of its figures; left out: SI."),
  })
  .register(fieldFacts, { accepted: "a column of the file", example: '{ "column": "Time (s)", "unit": "s" }' })
  .optional();

/** An altimeter's record and what its columns hold. */
export const logSchema = z.strictObject({
  ...head("log"),
  source: filePath("third-flight.csv").describe("Relative path of the CSV file."),
  columns: z
    .strictObject({
      time: column.describe("Time."),
      height: column.describe("Height above the pad."),
      altitude: column.describe("Altitude above mean sea level."),
      pressure: column.describe("Static pressure."),
      speed: column.describe("Vertical speed."),
      acceleration: column.describe("Acceleration along the axis."),
      temperature: column.describe("Temperature."),
    })
    .describe("What the columns hold."),
  instrument: text().optional().describe("What recorded it, in your own words."),
});

export type LogDocument = z.infer<typeof logSchema>;
