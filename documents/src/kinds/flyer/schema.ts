import * as z from "zod";
import { count, head, text } from "../fields.js";
import { made } from "../made.js";

/** Who flies. */
export const flyerSchema = made(() => {
  return z.strictObject({
    ...head("flyer"),
    certification: count(0, 3, 1).optional().describe("Certification level, 0 for none."),
    age: count(0, 120, 35).optional().describe("Age in years."),
    association: text().optional().describe("The association that certified it."),
  });
});

export type FlyerDocument = z.infer<ReturnType<typeof flyerSchema>>;
