import * as z from "zod";
import { fieldFacts, filePath, head } from "../fields.js";

/** Everything in one file, for back-up and for moving between devices. Its documents are read one by one, so a broken one stops no other. */
export const librarySchema = z.strictObject({
  ...head("library"),
  documents: z
    .array(
      z.looseObject({
        kind: z.string().max(60).register(fieldFacts, { accepted: "a kind of document", example: '"rocket"' }),
      }),
    )
    .max(100_000)
    .register(fieldFacts, { accepted: "a list of documents", example: "[]" })
    .describe("The documents, each of any kind but this one."),
  files: z
    .array(filePath("demo.rocket.json"))
    .max(100_000)
    .optional()
    .describe("The names by which the documents refer to each other, one for each, in the same order."),
});

export type LibraryDocument = z.infer<typeof librarySchema>;
