import { eventNames } from "@delaywright/engine";
import * as z from "zod";
import { fieldFacts, number, quantity, text } from "../fields.js";
import { made } from "../made.js";

const clock = (example: string) => quantity("time", { from: "-60 s", to: "7200 s", example });
const sigma = (example: string) => quantity("time", { from: "0 s", to: "100 s", example });
const height = (example: string) => quantity("length", { from: "-3 km", to: "100 km", example });

/** A factor on what the documents say, as the climb of one flight tells it. */
const scale = (what: string) =>
  z
    .strictObject({
      factor: number(0.01, 100, 1.08).describe(`Factor on ${what}.`),
      sd: number(0, 10, 0.05).describe("One sigma of its natural logarithm, from this flight alone."),
    })
    .register(fieldFacts, { accepted: "a factor and its sigma", example: '{ "factor": 1.08, "sd": 0.05 }' });

/** What was found out about a flight. */
export const findingsSchema = made(() => {
  const event = z.strictObject({
    name: z.enum(eventNames).describe("What happened."),
    time: clock("3.42 s").describe("When, counted from lift-off."),
    timeError: sigma("0.05 s").optional().describe("One sigma of the time."),
    height: height("212 m").optional().describe("Height above the pad."),
    heightError: quantity("length", { from: "0 m", to: "10 km", example: "1 m" })
      .optional()
      .describe("One sigma of the height."),
    reason: text(60).optional().describe("By what it was placed there: the tool's own code."),
    movedFrom: clock("3.60 s").optional().describe("Where it had been found before the flyer moved it."),
  });

  return z.strictObject({
    set: quantity("time", { from: "0 s", to: "60 s", example: "10 s" }).optional().describe("Delay as cut."),
    setError: sigma("0.25 s")
      .optional()
      .describe("One sigma of the delay as cut that is not the motor's: depth of the cut, burning rate of the day."),
    delay: quantity("time", { from: "0 s", to: "120 s", example: "10.4 s" }).optional().describe("Delay as flown."),
    delayError: sigma("0.1 s").optional().describe("One sigma of the delay as flown."),
    delayIs: z
      .enum(["seen", "at-least", "at-most"])
      .optional()
      .describe("Whether the delay was seen (when left out), or is only known to be at least or at most this."),
    openedBy: z.enum(["motor", "electronics"]).optional().describe("What opened it."),
    openedAt: clock("13.8 s").optional().describe("When it opened, counted from lift-off."),
    coast: quantity("time", { from: "0 s", to: "300 s", example: "9.8 s" }).optional().describe("Coast as flown."),
    apogee: quantity("length", { from: "0 m", to: "100 km", example: "640 m" })
      .optional()
      .describe("Height of the apogee."),
    outcome: z.enum(["clean", "fast", "low", "grounded"]).optional().describe("How it opened."),
    outcomeBy: z
      .enum(["flyer", "record"])
      .optional()
      .describe("Who says so: the flyer (when left out), whom no record overrules, or the record."),
    events: z.array(event).max(20).optional().describe("What happened and when."),
    drag: scale("the rocket's drag").optional().describe("Drag, against what the plan's documents say."),
    impulse: scale("the motor's total impulse").optional().describe("Impulse, against what the plan's documents say."),
    scalesCorrelation: number(-1, 1, 0.4)
      .optional()
      .describe("Correlation of the two factors' logarithms; left out: none."),
    residual: quantity("length", { from: "0 m", to: "100 km", example: "1.2 m" })
      .optional()
      .describe("Root mean square of what the fitted climb leaves of the heights."),
  });
});

/** What was foretold for a flight, kept so that odds can be held against what came. */
export const forecastSchema = made(() =>
  z.strictObject({
    clean: number(0, 1, 0.93).describe("Odds of a clean opening."),
    apogee: z
      .strictObject({
        from: height("600 m").describe("5 % stay below."),
        to: height("690 m").describe("95 % stay below."),
      })
      .optional()
      .describe("Band in which nine in ten tops lie."),
  }),
);
