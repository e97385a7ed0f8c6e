import * as z from "zod";
import { fieldFacts, number, quantity, text } from "../fields.js";
import { made } from "../made.js";

const speed = (example: string) => quantity("speed", { from: "0 m/s", to: "100 m/s", example });
const azimuth = (example: string) => quantity("angle", { from: "-360 deg", to: "360 deg", example });
const air = (example: string) => quantity("temperature", { from: "-90 degC", to: "70 degC", example });
const pressure = (example: string) => quantity("pressure", { from: "300 hPa", to: "1100 hPa", example });

/** The weather at the field. */
export const weatherSchema = made(() =>
  z.strictObject({
    temperature: air("12 degC").optional().describe("Air temperature; left out: the standard's at the elevation."),
    pressure: pressure("987 hPa").optional().describe("Station pressure; left out: the standard's at the elevation."),
    seaLevelPressure: pressure("1013 hPa").optional().describe("Pressure reduced to sea level, instead of pressure."),
    humidity: number(0, 1, 0.6).optional().describe("Relative humidity as a fraction; left out: dry air."),
    motorTemperature: air("20 degC").optional().describe("Temperature of the soaked motor; left out: the air's."),
    wind: speed("2 m/s").optional().describe("Wind speed."),
    windFrom: azimuth("240 deg").optional().describe("Where the wind blows from, degrees true."),
    measuredAt: quantity("length", { from: "0.1 m", to: "500 m", example: "2 m" })
      .optional()
      .describe("Height of the wind reading above the ground; left out: 2 m."),
    terrain: z
      .enum(["water", "open", "rough", "wooded"])
      .optional()
      .describe("What the wind blows over; left out: open."),
    gradientHeight: z
      .union([z.literal("none"), quantity("length", { from: "10 m", to: "5 km", example: "300 m" })])
      .register(fieldFacts, { accepted: 'a height with its unit, or "none"', example: '"300 m"' })
      .optional()
      .describe("Where the wind stops growing with height; left out: 300 m."),
    aloft: z
      .array(
        z.strictObject({
          height: quantity("length", { from: "0 m", to: "30 km", example: "150 m" }).describe("Height above the pad."),
          wind: speed("6 m/s").describe("Wind speed there."),
          from: azimuth("215 deg").describe("Where it blows from."),
        }),
      )
      .min(1)
      .max(200)
      .optional()
      .describe("Winds at several heights, rising; replaces wind, windFrom, measuredAt, terrain and gradientHeight."),
    taken: text(60).optional().describe("When it was read."),
  }),
);

/** Weather for which a cut at home must leave room. */
export const weatherRangeSchema = made(() =>
  z.strictObject({
    wind: z
      .tuple([speed("0 m/s"), speed("8 m/s")])
      .register(fieldFacts, { accepted: "least and most wind", example: '["0 m/s", "8 m/s"]' })
      .optional()
      .describe("Least and most wind."),
    temperature: z
      .tuple([air("5 degC"), air("25 degC")])
      .register(fieldFacts, { accepted: "least and most temperature", example: '["5 degC", "25 degC"]' })
      .optional()
      .describe("Least and most air temperature."),
  }),
);
