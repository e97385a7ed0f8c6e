import * as z from "zod";
import { fieldFacts, head, quantity, text } from "../fields.js";
import { made } from "../made.js";

/** A club's own rules: it tightens, loosens or turns off rules of a set that holds where it says nothing. */
export const ruleSetSchema = made(() => {
  const limit = z.union([z.literal("none"), z.string().trim().min(1).max(60), z.number()]).register(fieldFacts, {
    accepted: 'a quantity with its unit, a number where the rule has none, or "none"',
    example: '"6 m/s"',
  });
  const distance = (example: string) => quantity("length", { from: "0 m", to: "100 km", example });

  const row = z.strictObject({
    upTo: quantity("impulse", { above: "0 N s", example: "320 N s" }).describe("Installed total impulse, inclusive."),
    single: distance("30 m").describe("Least distance of people from the pad."),
    complex: distance("60 m").describe("The same for more than one motor."),
    cleared: distance("15 m").optional().describe("Least diameter of ground cleared of what burns; left out: no rule."),
  });

  return z.strictObject({
    ...head("rule-set"),
    source: text().optional().describe("Where these rules are written; left out: the name."),
    edition: text(60).optional().describe("Edition or date of that."),
    base: z
      .enum(["association", "none"])
      .optional()
      .describe(
        "What holds where these rules say nothing: the association's codes with the aviation rule (when left out), or physics and own defaults only.",
      ),
    limits: z
      .record(
        z.string().max(60),
        z
          .union([
            z.literal("off"),
            z.strictObject({
              look: limit
                .optional()
                .describe("Past it somebody should look; left out: as it was; none: no such limit."),
              stop: limit.optional().describe("Past it no launch; left out: as it was; none: no such limit."),
            }),
          ])
          .register(fieldFacts, {
            accepted: 'an object with look and stop, or "off"',
            example: '{ "look": "4 m/s", "stop": "6 m/s" }',
          }),
      )
      .register(fieldFacts, {
        accepted: "limits by the rule's name",
        example: '{ "wind-limit": { "stop": "6 m/s" }, "weather-age": "off" }',
      })
      .optional()
      .describe(
        "Limits by the rule's name. A rule whose limits are multiples of another figure takes a number; others a quantity in the rule's unit.",
      ),
    distances: z
      .array(row)
      .min(1)
      .max(40)
      .register(fieldFacts, {
        accepted: "rows by total impulse, rising",
        example: '[{ "upTo": "320 N s", "single": "30 m", "complex": "60 m" }]',
      })
      .optional()
      .describe("In place of the safety code's table of distances."),
  });
});

export type RuleSetDocument = z.infer<ReturnType<typeof ruleSetSchema>>;
