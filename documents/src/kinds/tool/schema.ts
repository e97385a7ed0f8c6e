import * as z from "zod";
import { count, head, quantity, text } from "../fields.js";
import { made } from "../made.js";

/** A tool that shortens a delay: ends with fixed stops and spacers, or a hand-turned bit with a depth stop. */
export const toolSchema = made(() => {
  const amount = quantity(["time", "length"], { above: "0", example: "6 s" });
  const depth = { from: "0 mm", to: "500 mm" };

  return z.strictObject({
    ...head("tool"),
    ends: z
      .array(
        z.strictObject({
          name: text(60).describe("What is marked on the end."),
          removes: amount.describe("What a cut down to the stop takes off: seconds or a depth."),
        }),
      )
      .min(1)
      .max(8)
      .optional()
      .describe("The ends of the tool, each with a fixed stop."),
    spacers: z
      .array(
        z.strictObject({
          name: text(60).describe("What you call the spacer."),
          keepsBack: amount.describe("What it takes off the cut: seconds or a depth."),
          count: count(1, 10, 1).optional().describe("How many of it there are; left out: one."),
        }),
      )
      .max(6)
      .optional()
      .describe("Spacers that make a cut shallower."),
    stop: z
      .strictObject({
        from: quantity("length", { ...depth, example: "0 mm" }).describe("Shallowest setting."),
        to: quantity("length", { above: "0 mm", to: "500 mm", example: "8 mm" }).describe("Deepest setting."),
        step: quantity("length", { from: "0.01 mm", to: "50 mm", example: "0.1 mm" }).describe(
          "Step between settings.",
        ),
      })
      .optional()
      .describe("A hand-turned bit with a depth stop, instead of ends."),
    depthPerSecond: quantity("length", { above: "0 mm", to: "20 mm", example: "1/32 in" })
      .optional()
      .describe("Depth of delay grain for one second, for which the tool was made."),
    depthError: quantity("length", { from: "0 mm", to: "20 mm", example: "0.2 mm" })
      .optional()
      .describe("How far a cut strays from the depth that was meant, one sigma."),
  });
});

export type ToolDocument = z.infer<ReturnType<typeof toolSchema>>;
