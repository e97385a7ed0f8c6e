import * as z from "zod";
import { fieldFacts, lengthOrNone, number, quantity, timeOfDay, yesNo } from "../fields.js";
import { made } from "../made.js";

/** What the rules ask of the day at the field, as the flyer found it. What is left out is not known. */
export const siteSchema = made(() =>
  z.strictObject({
    launchAt: timeOfDay()
      .optional()
      .describe("When it is to fly; the field's hours and the weather's age are held against it."),
    daylight: yesNo().optional().describe("The sun is up then."),
    cloudCover: number(0, 1, 0.3).optional().describe("Share of the sky that clouds cover."),
    cloudBase: lengthOrNone("1200 m").optional().describe("Lowest cloud above the pad, or none."),
    visibility: quantity("length", { from: "0 m", to: "500 km", example: "15 km" }).optional().describe("Visibility."),
    people: quantity("length", { from: "0 m", to: "100 km", example: "60 m" })
      .optional()
      .describe("From the pad to the nearest person; left out: to the field's lines of people."),
    adultInCharge: yesNo()
      .optional()
      .describe("A person of at least 18 years is there, in charge of the launch, and has the last word on it."),
    fireMeans: yesNo().optional().describe("Means to report and to control a fire are at hand."),
    controlledAirspace: yesNo()
      .optional()
      .describe("The flight enters controlled airspace; left out: as the field says."),
    authorised: yesNo().optional().describe("The aviation authority has authorised what its rule else forbids."),
    noticeGiven: z
      .union([z.literal("none"), quantity("time", { from: "0 h", to: "240 h", example: "36 h" })])
      .register(fieldFacts, { accepted: 'a time with its unit, or "none"', example: '"36 h"' })
      .optional()
      .describe("How long before the flight the nearest air traffic control facility was told, or none."),
  }),
);

/** What the flyer wants of the packing. */
export const packingSchema = made(() =>
  z.strictObject({
    charge: quantity("mass", { from: "0 g", to: "100 g", example: "1.2 g" })
      .optional()
      .describe("Ejection charge that goes into the motor's well, instead of the one that it comes with."),
    landingSpeed: quantity("speed", { above: "0 m/s", to: "50 m/s", example: "5 m/s" })
      .optional()
      .describe("Speed of descent that a canopy is sized for; left out: 5 m/s."),
    energyLimit: quantity("energy", { above: "0 J", example: "100 J" })
      .optional()
      .describe("Most energy with which a section should land; left out: 75 ft lbf."),
    separationMargin: number(0.5, 20, 1.5)
      .optional()
      .describe("Times the holding force that the charge should push with; left out: 1.5."),
  }),
);
