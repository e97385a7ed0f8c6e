import * as z from "zod";
import { count, fieldFacts, filePath, head } from "../fields.js";
import { made } from "../made.js";

/** Everything in one file, for back-up and for moving between devices. Its documents are read one by one, so a broken one stops no other. */
export const librarySchema = made(() => {
  return z.strictObject({
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
    unreadable: z
      .array(
        z.strictObject({
          file: filePath("demo.rocket.json").describe("The name that it has among the others."),
          text: z
            .string()
            .max(5_000_000)
            .register(fieldFacts, { accepted: "a text", example: "" })
            .describe("The text as it was."),
        }),
      )
      .max(100_000)
      .optional()
      .describe("Documents that could not be read, as they were."),
    drafts: z
      .array(
        z.strictObject({
          file: filePath("demo.rocket.json").describe("The document whose fields these are."),
          fields: z
            .record(z.string().max(1000), z.string().max(10_000))
            .register(fieldFacts, { accepted: "texts by the path of their field", example: '{ "length": "1.5z m" }' })
            .describe("What was typed into fields but cannot be read yet, by the path of the field."),
        }),
      )
      .max(100_000)
      .optional()
      .describe("What was typed but cannot be read yet; the documents hold the last that was right."),
    records: z
      .array(
        z.strictObject({
          file: filePath("third-flight.csv").describe("The path by which its log names it."),
          part: count(1, 1000, 1).optional().describe("Which part of it this is, from 1; left out: all of it."),
          of: count(1, 1000, 1)
            .optional()
            .describe("In how many parts it stands, here and in libraries beside this one."),
          gzip: z
            .string()
            .max(5_000_000)
            .register(fieldFacts, { accepted: "compressed bytes as a text in base 64", example: "" })
            .describe("Its bytes, compressed by gzip, in base 64."),
        }),
      )
      .max(10_000)
      .optional()
      .describe("Files that logs were read from."),
  });
});

export type LibraryDocument = z.infer<ReturnType<typeof librarySchema>>;
