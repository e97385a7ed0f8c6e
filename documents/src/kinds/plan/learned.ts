import * as z from "zod";
import { count, fieldFacts, moment, number, quantity, text } from "../fields.js";
import { made } from "../made.js";

/** What past flights taught, as the flyer accepted it for this plan. */
export const learnedSchema = made(() => {
  /** Factor on what the documents say, with the sigma of its logarithm. */
  const scale = (what: string) =>
    z
      .strictObject({
        factor: number(0.01, 100, 1.08).describe(`Factor on ${what}.`),
        sd: number(0, 10, 0.05).describe("One sigma of its natural logarithm."),
      })
      .register(fieldFacts, { accepted: "a factor and its sigma", example: '{ "factor": 1.08, "sd": 0.05 }' });

  const seconds = (example: string) => quantity("time", { from: "-60 s", to: "60 s", example });
  const sigma = (example: string) => quantity("time", { from: "0 s", to: "60 s", example });
  const correlation = () => number(-1, 1, 0);

  const delay = z
    .strictObject({
      offset: seconds("0.3 s").describe("Added to every delay of the motor type."),
      offsetSd: sigma("0.2 s").describe("Scale of its uncertainty."),
      rate: number(0, 10, 1.02).describe("Factor on the delay as set."),
      rateSd: number(0, 10, 0.02).describe("Scale of its uncertainty."),
      lot: number(-20, 20, 0.4).describe("The lot's own share, in sigmas of what lots differ by."),
      lotSd: number(0, 20, 0.8).describe("Scale of its uncertainty."),
      correlations: z
        .tuple([correlation(), correlation(), correlation()])
        .register(fieldFacts, { accepted: "three correlations from -1 to 1", example: "[-0.6, -0.1, -0.1]" })
        .describe("Of offset with rate, offset with lot, rate with lot."),
      motorScale: number(0, 1000, 0.9).describe("Factor on the variance of a single motor's scatter."),
      degrees: number(2.01, 100_000, 14).describe("Degrees of freedom of the Student-t."),
      seconds: sigma("0.75 s").describe("What was known before any flight: scatter in seconds."),
      fraction: number(0, 1, 0.1).describe("Likewise as a fraction of the delay as cut; the greater of the two held."),
      seen: count(0, 100_000, 3).describe("Delays that were seen."),
      bounds: count(0, 100_000, 0).describe("Delays that were only bounded."),
    })
    .register(fieldFacts, {
      accepted: "what flights taught of the motor type's delay",
      example:
        '{ "offset": "0.3 s", "offsetSd": "0.2 s", "rate": 1.02, "rateSd": 0.02, "lot": 0, "lotSd": 1, "correlations": [-0.6, 0, 0], "motorScale": 0.9, "degrees": 14, "seconds": "0.75 s", "fraction": 0.1, "seen": 2, "bounds": 0 }',
    });

  return z
    .strictObject({
      rocket: text().describe("Name of the rocket that it was learned of; it counts for no other."),
      motor: text().describe("Name of the motor type that it was learned of; it counts for no other."),
      lot: text().optional().describe("Lot that the delay was learned for; left out: for any."),
      drag: scale("the rocket's drag").describe("The rocket's drag."),
      impulse: scale("the motor type's total impulse").describe(
        "The motor type's impulse, a single motor's scatter in it.",
      ),
      correlation: number(-1, 1, 0.4).describe("Correlation of the two factors' logarithms."),
      delay: delay.optional().describe("The motor type's delay; left out: nothing was learned of it."),
      flights: z
        .strictObject({
          rocket: count(0, 100_000, 3).describe("Flights of this rocket."),
          motor: count(0, 100_000, 2).describe("Flights of this motor type."),
          both: count(0, 100_000, 1).describe("Flights of this rocket on this motor type."),
        })
        .register(fieldFacts, {
          accepted: "three counts of flights",
          example: '{ "rocket": 3, "motor": 2, "both": 1 }',
        })
        .describe("Flights that it was learned from."),
      accepted: moment().optional().describe("When you accepted it."),
    })
    .register(fieldFacts, {
      accepted: "what flights taught, as the debrief writes it",
      example:
        '{ "rocket": "Demo", "motor": "Demo H150", "drag": { "factor": 1.08, "sd": 0.05 }, "impulse": { "factor": 0.99, "sd": 0.02 }, "correlation": 0, "flights": { "rocket": 1, "motor": 1, "both": 1 } }',
    });
});

export type LearnedDocument = z.infer<ReturnType<typeof learnedSchema>>;
