import * as z from "zod";
import { count, fieldFacts, quantity } from "../fields.js";
import { made } from "../made.js";

/** A ring of equal fins, by the shape of one. */
export const finsSchema = made(() => {
  const edge = z.enum(["square", "round", "sharp"]).optional();
  const positive = { above: "0 mm", to: "5 m" };
  const ring = {
    count: count(2, 16, 3).describe("How many fins stand in this ring."),
    at: quantity("length", { from: "0 mm", to: "50 m", example: "1.26 m" }).describe(
      "The root's leading edge, from the nose tip.",
    ),
    thickness: quantity("length", { above: "0 mm", to: "200 mm", example: "4 mm" }).describe("Thickness of the fin."),
    leadingEdge: edge.describe("Left out: round."),
    trailingEdge: edge.describe("Left out: square."),
    cant: quantity("angle", { from: "-15 deg", to: "15 deg", example: "0.5 deg" })
      .optional()
      .describe("Angle at which the fins stand to the axis: it makes the rocket roll. Left out: 0 deg."),
  };
  const coordinate = quantity("length", { from: "-5 m", to: "5 m", example: "60 mm" });

  return z
    .union([
      z.strictObject({
        shape: z.literal("trapezoid").optional().describe("Four corners; what is meant when left out."),
        ...ring,
        root: quantity("length", { ...positive, example: "180 mm" }).describe("Chord at the tube."),
        tip: quantity("length", { from: "0 mm", to: "5 m", example: "80 mm" }).describe("Chord at the tip."),
        span: quantity("length", { ...positive, example: "90 mm" }).describe(
          "From the tube to the tip, square to the tube.",
        ),
        sweep: quantity("length", { from: "-5 m", to: "5 m", example: "100 mm" }).describe(
          "How far the tip's leading edge is set back.",
        ),
      }),
      z.strictObject({
        shape: z.literal("ellipse").describe("Half an ellipse."),
        ...ring,
        root: quantity("length", { ...positive, example: "180 mm" }).describe("Chord at the tube."),
        span: quantity("length", { ...positive, example: "90 mm" }).describe("From the tube to the tip."),
      }),
      z.strictObject({
        shape: z.literal("polygon").describe("Any outline."),
        ...ring,
        points: z
          .array(
            z
              .tuple([coordinate, coordinate])
              .register(fieldFacts, { accepted: "chordwise and spanwise distance", example: '["50 mm", "60 mm"]' }),
          )
          .min(3)
          .max(200)
          .register(fieldFacts, {
            accepted: "at least three corners",
            example: '[["0 mm", "0 mm"], ["90 mm", "90 mm"], ["180 mm", "0 mm"]]',
          })
          .describe(
            "Corners, chordwise and spanwise from the root's leading edge; the first and the last lie on the root.",
          ),
      }),
    ])
    .register(fieldFacts, {
      accepted: "a ring of fins",
      example:
        '{ "count": 3, "at": "1.26 m", "root": "180 mm", "tip": "80 mm", "span": "90 mm", "sweep": "100 mm", "thickness": "4 mm" }',
    });
});
