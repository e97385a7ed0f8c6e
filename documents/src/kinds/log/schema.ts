import * as z from "zod";
import { count, fieldFacts, filePath, head, text, yesNo } from "../fields.js";
import { made } from "../made.js";

/** An altimeter's record and what its columns hold. */
export const logSchema = made(() => {
  const columnFields = {
    column: z
      .union([text(200), count(1, 500, 1)])
      .register(fieldFacts, { accepted: "the heading of a column, or its number from 1", example: '"Height (m)"' })
      .describe("Heading of the column, or its number from 1."),
    unit: text(20).optional().describe("Unit of its figures; left out: the unit in its heading, else SI."),
  };

  const columnFacts = { accepted: "a column of the file", example: '{ "column": "Time (s)", "unit": "s" }' };

  const column = z.strictObject(columnFields).register(fieldFacts, columnFacts).optional();

  const axisColumn = z
    .strictObject({
      ...columnFields,
      reversed: yesNo().optional().describe("Whether forward counts as negative in it."),
    })
    .register(fieldFacts, columnFacts)
    .optional();

  const textColumn = z
    .strictObject({ column: columnFields.column })
    .register(fieldFacts, { accepted: "a column of the file", example: '{ "column": "Event" }' })
    .optional();

  return z.strictObject({
    ...head("log"),
    source: filePath("third-flight.csv").describe("Relative path of the CSV file."),
    columns: z
      .strictObject({
        time: column.describe("Time."),
        height: column.describe("Height above the pad."),
        altitude: column.describe("Altitude above mean sea level."),
        pressure: column.describe("Static pressure."),
        speed: column.describe("Vertical speed."),
        acceleration: axisColumn.describe("Acceleration along the axis."),
        temperature: column.describe("Temperature."),
        battery: column.describe("Voltage of the battery."),
        marks: textColumn.describe("What the instrument itself wrote down of events."),
      })
      .describe("What the columns hold."),
    headings: text(1000)
      .optional()
      .describe("The file's headings in one line: the next file with the same ones is read alike."),
    instrument: text().optional().describe("What recorded it, in your own words."),
  });
});

export type LogDocument = z.infer<ReturnType<typeof logSchema>>;
