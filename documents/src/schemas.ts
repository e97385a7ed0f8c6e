import * as z from "zod";
import { type Kind, kinds } from "./kinds/kinds.js";

/**
 * The JSON Schema (draft 2020-12) of a kind of document, by which editors complete and check it.
 *
 * It says less than reading does: units, ranges of quantities and what fields are to each other are looked at on reading only.
 *
 * @param kind for example `rocket`
 * @returns the schema, ready to be written as JSON
 */
export function jsonSchemaOf(kind: Kind): Record<string, unknown> {
  const { $schema, ...rest } = z.toJSONSchema(kinds[kind].schema(), {
    io: "input",
    reused: "ref",
    target: "draft-2020-12",
  });
  return { $schema, title: `Delaywright ${kind}, version ${kinds[kind].versions.current}`, ...rest };
}
