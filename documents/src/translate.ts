import type { z } from "zod";
import { type Fault, joinPath, show } from "./issue.js";
import { nearestName } from "./nearest.js";
import { factsAt, keysAt } from "./schema-walk.js";
import { notCovered, notCoveredWords, oneOf } from "./words/accepted.en.js";

type ZodIssue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

/** Most unknown fields of one object that are reported: more is no slip of the pen. */
const MOST_KEYS = 50;

/** Keys that tell the branches of a union apart. */
const TELLING = ["kind", "shape", "from"];

/**
 * Turns what the schema found into faults with path, found, accepted and example.
 *
 * @param issues as zod gives them
 * @param root the schema that found them
 * @param value what was parsed
 */
export function translate(issues: readonly ZodIssue[], root: z.ZodType, value: unknown): Fault[] {
  return issues.flatMap((issue) => translateOne(issue, [], root, value));
}

function translateOne(issue: ZodIssue, base: Path, root: z.ZodType, value: unknown): Fault[] {
  const path = [...base, ...issue.path];
  const facts = factsAt(root, path);
  const found = valueAt(value, path);
  const fault = (code: string, accepted: string, example = facts?.example ?? ""): Fault => {
    return { path: joinPath(path), code, found: show(found), accepted, example };
  };
  switch (issue.code) {
    case "custom": {
      const { code, accepted, example } = (issue.params ?? {}) as {
        code?: string;
        accepted?: string;
        example?: string;
      };
      return [fault(code ?? "wrong-value", accepted ?? "", example ?? "")];
    }
    case "unrecognized_keys":
      return issue.keys.slice(0, MOST_KEYS).map((key) => unknownKey(key, path, root, value));
    case "invalid_union":
      return union(issue, path, root, value) ?? [fault(codeOf(found), facts?.accepted ?? "another value")];
    case "invalid_value":
      return [fault(codeOf(found, "wrong-choice"), oneOf(issue.values), oneOf(issue.values.slice(0, 1)))];
    case "invalid_type":
      return [fault(codeOf(found), facts?.accepted ?? plainType(issue.expected))];
    default:
      return [fault("out-of-range", facts?.accepted ?? sizeWords(issue))];
  }
}

/** How long a list or a text may be. */
function sizeWords(issue: ZodIssue): string {
  if (issue.code === "too_small" && issue.origin === "array") return `a list of ${issue.minimum} or more`;
  if (issue.code === "too_big" && issue.origin === "array") return `a list of up to ${issue.maximum}`;
  return issue.code === "too_big" && issue.origin === "string"
    ? `a text of up to ${issue.maximum} letters`
    : "another value";
}

function codeOf(found: unknown, otherwise = "wrong-type"): string {
  return found === undefined ? "missing" : otherwise;
}

function plainType(expected: string): string {
  const words: Record<string, string> = { array: "a list", object: "an object", string: "a text", number: "a number" };
  return words[expected] ?? `a ${expected}`;
}

function unknownKey(key: string, base: Path, root: z.ZodType, value: unknown): Fault {
  const path = joinPath([...base, key]);
  const found = show(valueAt(value, [...base, key]));
  if (notCovered(key, base.at(-1))) return { path, code: "not-covered", found, accepted: notCoveredWords, example: "" };
  const known = keysAt(root, base);
  const near = nearestName(key, known);
  const accepted = near === undefined ? `one of the fields ${known.join(", ")}` : `did you mean \`${near}\`?`;
  return { path, code: "unknown-field", found, accepted, example: "" };
}

/** Of a union only the branch that was meant is worth reporting: the one whose kind or type fits. */
function union(
  issue: Extract<ZodIssue, { code: "invalid_union" }>,
  path: Path,
  root: z.ZodType,
  value: unknown,
): Fault[] | undefined {
  const branches = issue.errors.filter(
    (errors) => !errors.some((each) => each.path.length === 0 && each.code === "invalid_type"),
  );
  if (branches.length === 0) return undefined;
  const told = branches.filter((errors) => !errors.some(tells));
  if (told.length === 0) {
    const telling = branches.flatMap((errors) => errors.filter(tells));
    const first = telling[0];
    if (first === undefined || first.path.length === 0) return undefined;
    const values = telling.flatMap((each) => (each.code === "invalid_value" ? each.values : []));
    const at = [...path, ...first.path];
    const found = valueAt(value, at);
    const code = codeOf(found, "wrong-choice");
    return [
      { path: joinPath(at), code, found: show(found), accepted: oneOf(values), example: oneOf(values.slice(0, 1)) },
    ];
  }
  const fewest = told.reduce((best, each) => (each.length < best.length ? each : best));
  return fewest.flatMap((each) => translateOne(each, path, root, value));
}

function tells(issue: ZodIssue): boolean {
  return (
    issue.code === "invalid_value" &&
    issue.path.length <= 1 &&
    (issue.path.length === 0 || TELLING.includes(String(issue.path[0])))
  );
}

function valueAt(value: unknown, path: Path): unknown {
  let here = value;
  for (const key of path) {
    if (typeof here !== "object" || here === null || !Object.hasOwn(here, key)) return undefined;
    here = (here as Record<PropertyKey, unknown>)[key];
  }
  return here;
}
