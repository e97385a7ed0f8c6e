import type { z } from "zod";
import { type Fault, type Issue, joinPath, show } from "../issue.js";
import { type Kind, kinds } from "../kinds/kinds.js";
import { nearestName } from "../nearest.js";
import { keysAt, schemasAt } from "../schema-walk.js";
import { translate } from "../translate.js";
import { oneOf } from "../words/accepted.en.js";
import { fieldAt } from "./field-at.js";
import { type FieldPath, stepsOf } from "./field-path.js";

/**
 * Whether one value is right for one field, by the field alone: fast enough for every keystroke.
 *
 * What fields must be to each other is not looked at; `readValue` does that for the whole document.
 *
 * @param kind kind of the document
 * @param path steps, or as it stands in an issue
 * @param value as it would stand in the document; undefined: left out
 * @returns what is wrong, its `file` empty; say it by `issueSentence`, with `path: ""` beside the field
 * @example
 * checkField("rocket", "fins[0].root", "18o mm")?.code; // "unit-unknown"
 */
export function checkField(kind: Kind, path: string | FieldPath, value: unknown): Issue | undefined {
  const steps = stepsOf(path) ?? [String(path)];
  const { schema, checkOne } = kinds[kind];
  const fault = checkOne?.(steps, value) ?? faultOf(schema(), kind, steps, value);
  return fault && { file: "", ...fault };
}

function faultOf(root: z.ZodType, kind: Kind, steps: FieldPath, value: unknown): Fault | undefined {
  const shape = fieldAt(kind, steps);
  const path = joinPath(steps);
  if (shape === undefined) return unknownField(root, steps, path, value);
  let fewest: Fault[] | undefined;
  for (const schema of schemasAt(root, steps)) {
    const result = schema.safeParse(value);
    if (result.success) return undefined;
    const faults = translate(result.error.issues, schema, value);
    if (fewest === undefined || faults.length < fewest.length) fewest = faults;
  }
  if (shape.holds === "choice" && shape.choices !== undefined) {
    const code = value === undefined ? "missing" : "wrong-choice";
    const example = nearestName(String(value), shape.choices.map(String)) ?? shape.choices[0];
    return { path, code, found: show(value), accepted: oneOf(shape.choices), example: JSON.stringify(example) };
  }
  const [first] = fewest ?? [];
  if (first === undefined) return undefined;
  const joint = first.path === "" || first.path.startsWith("[") ? "" : ".";
  return { ...first, path: `${path}${joint}${first.path}` };
}

function unknownField(root: z.ZodType, steps: FieldPath, path: string, value: unknown): Fault {
  const keys = keysAt(root, steps.slice(0, -1));
  const near = nearestName(String(steps.at(-1) ?? ""), keys);
  const accepted = near === undefined ? `one of the fields ${keys.join(", ")}` : `did you mean \`${near}\`?`;
  return { path, code: "unknown-field", found: show(value), accepted, example: "" };
}
