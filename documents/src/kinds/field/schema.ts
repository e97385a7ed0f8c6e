import * as z from "zod";
import { fieldFacts, head, lengthOrNone, quantity, text, yesNo } from "../fields.js";
import { made } from "../made.js";

/** A place to fly from. */
export const fieldSchema = made(() => {
  const place = quantity("length", { from: "-100 km", to: "100 km", example: "120 m" });
  const azimuth = quantity("angle", { from: "-360 deg", to: "360 deg", example: "200 deg" });
  const corner = z
    .tuple([place, place])
    .register(fieldFacts, { accepted: "east and north of the field's origin", example: '["120 m", "-40 m"]' });
  const outline = z.array(corner).min(3).max(1000).register(fieldFacts, {
    accepted: "at least three corners",
    example: '[["0 m", "0 m"], ["90 m", "0 m"], ["0 m", "90 m"]]',
  });
  const heightLimit = { above: "0 m", to: "100 km", example: "900 m" };

  return z.strictObject({
    ...head("field"),
    elevation: quantity("length", { from: "-500 m", to: "6000 m", example: "210 m" }).describe(
      "Height of the pad above mean sea level.",
    ),
    latitude: quantity("angle", { from: "-90 deg", to: "90 deg", example: "52.3 deg" })
      .optional()
      .describe("Geodetic latitude, north positive."),
    ceiling: z
      .union([
        quantity("length", heightLimit),
        z.strictObject({
          height: quantity("length", heightLimit).describe("Height of the ceiling."),
          above: z.enum(["ground", "sea level"]).optional().describe("What it counts from; left out: the ground."),
        }),
      ])
      .register(fieldFacts, {
        accepted: "a height above the ground, or an object with height and above",
        example: '"900 m"',
      })
      .optional()
      .describe("How high one may fly."),
    boundary: z
      .union([
        z.strictObject({
          shape: z.literal("circle").describe("A circle about the field's origin."),
          radius: quantity("length", { above: "0 m", to: "100 km", example: "400 m" }).describe("Its radius."),
        }),
        z.strictObject({
          shape: z.literal("polygon").describe("An outline."),
          points: outline.describe("Corners, east and north of the field's origin."),
        }),
      ])
      .register(fieldFacts, { accepted: "a circle or a polygon", example: '{ "shape": "circle", "radius": "400 m" }' })
      .optional()
      .describe("The field's edge."),
    pad: z
      .strictObject({
        east: place.describe("East of the field's origin."),
        north: place.describe("North of the field's origin."),
      })
      .optional()
      .describe("Where the pad stands; left out: at the origin."),
    keepOff: z
      .array(z.strictObject({ name: text().describe("What is there."), points: outline.describe("Its corners.") }))
      .max(100)
      .optional()
      .describe("Where nothing may come down."),
    people: z
      .array(
        z.strictObject({
          name: text().optional().describe("Who stands there."),
          points: z
            .array(corner)
            .min(1)
            .max(1000)
            .register(fieldFacts, {
              accepted: "the points of a line, or one point",
              example: '[["-60 m", "-30 m"], ["60 m", "-30 m"]]',
            })
            .describe("The points of the line, east and north of the field's origin."),
        }),
      )
      .max(100)
      .optional()
      .describe("Lines along which people stand."),
    tiltSector: z
      .strictObject({ from: azimuth.describe("From this azimuth, clockwise"), to: azimuth.describe("to this one.") })
      .optional()
      .describe("Azimuths towards which the guide may lean."),
    hours: text().optional().describe('When one may fly, best as "9:00 to 18:00"; left out: always.'),
    smallest: quantity("length", { above: "0 m", to: "100 km", example: "600 m" })
      .optional()
      .describe("Its smallest dimension; left out: that of its boundary, unless that is dented."),
    clearedDiameter: quantity("length", { from: "0 m", to: "1 km", example: "20 m" })
      .optional()
      .describe("Diameter of the ground about the pad that is cleared of what burns."),
    distances: z
      .strictObject({
        building: lengthOrNone("800 m").optional().describe("From the pad to the nearest occupied building."),
        road: lengthOrNone("700 m")
          .optional()
          .describe("From the pad to the nearest public road with more than ten vehicles an hour."),
        airport: lengthOrNone("20 km").optional().describe("From the pad to the boundary of the nearest airport."),
        uninvolved: lengthOrNone("600 m")
          .optional()
          .describe("From the pad to the nearest persons and property that have no part in the launch."),
      })
      .register(fieldFacts, { accepted: "distances, or none", example: '{ "building": "800 m", "road": "none" }' })
      .optional()
      .describe("How far the neighbours are; none where there is none near."),
    controlledAirspace: yesNo().optional().describe("Flights from here enter controlled airspace."),
  });
});

export type FieldDocument = z.infer<ReturnType<typeof fieldSchema>>;
