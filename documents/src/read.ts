import { decodeText } from "./decode.js";
import { type Fault, type Issue, show } from "./issue.js";
import { parseJson } from "./json/parse.js";
import { type Document, isKind, type Kind, kindNames, kinds } from "./kinds/kinds.js";
import { RawView } from "./kinds/raw.js";
import { migrate, type Raw } from "./migrate.js";
import { nearestName } from "./nearest.js";
import { translate } from "./translate.js";
import { oneOf } from "./words/accepted.en.js";

export interface ReadOptions {
  /** What the file is called in messages. */
  readonly file: string;
  /** The kinds that fit here; left out: any. */
  readonly kinds?: readonly Kind[];
}

/** A document that was read, or why it was not. The text is kept as it is in either case. */
export type Read<D = Document> =
  | {
      readonly state: "ready";
      readonly document: D;
      readonly kind: Kind;
      readonly raw: Raw;
      readonly issues: readonly [];
    }
  | {
      /** `invalid`: its fields are wrong; `newer`: made by a newer version; `unreadable`: no JSON object at all. */
      readonly state: "invalid" | "newer" | "unreadable";
      readonly kind: Kind | undefined;
      /** What could be parsed, so that what it refers to can be looked at too. */
      readonly raw: Raw | undefined;
      readonly issues: readonly Issue[];
    };

/**
 * Reads one document from its text: JSON, version, fields, and what they must be to each other.
 *
 * Every issue is reported at once. Nothing is thrown, and nothing is read from elsewhere: paths to other files stay paths.
 *
 * @param text the file's text
 * @param options file: its name in messages; kinds: the kinds that fit
 * @returns the document as it was typed, or every issue
 * @example
 * readDocument('{ "kind": "field", "version": 1, "name": "Larkmoor", "elevation": "210 m" }', { file: "larkmoor.json" }).state; // "ready"
 */
export function readDocument(text: string, options: ReadOptions): Read {
  const parsed = parseJson(text.startsWith("\uFEFF") ? text.slice(1) : text);
  const at = (fault: Fault): Issue => ({ file: options.file, ...fault });
  if (!parsed.ok) return { state: "unreadable", kind: undefined, raw: undefined, issues: parsed.faults.map(at) };
  return readValue(parsed.value, options, parsed.faults);
}

/** Reads one document from a file's bytes: its encoding is looked at first. */
export function readBytes(bytes: Uint8Array, options: ReadOptions): Read {
  const decoded = decodeText(bytes);
  if (decoded.ok) return readDocument(decoded.text, options);
  return { state: "unreadable", kind: undefined, raw: undefined, issues: [{ file: options.file, ...decoded.fault }] };
}

/**
 * Reads one document from a value that JSON could have given.
 *
 * @param value the parsed document
 * @param options as for `readDocument`
 * @param faults what parsing has already found
 */
export function readValue(value: unknown, options: ReadOptions, faults: readonly Fault[] = []): Read {
  const found: Fault[] = [...faults];
  const finish = (state: "invalid" | "newer" | "unreadable", kind?: Kind, raw?: Raw): Read => {
    return { state, kind, raw, issues: unique(found).map((fault) => ({ file: options.file, ...fault })) };
  };
  if (!isObject(value)) {
    found.push({
      path: "",
      code: "wrong-type",
      found: show(value),
      accepted: "a document, which is an object",
      example: '{ "kind": "rocket", … }',
    });
    return finish("unreadable");
  }
  const kind = kindOf(value, options.kinds ?? kindNames, found);
  if (kind === undefined) return finish("invalid", undefined, value);
  const raised = raiseVersions(value, kind, "", found);
  if (raised.newer) return finish("newer", kind, value);
  const { check } = kinds[kind];
  const schema = kinds[kind].schema();
  const result = schema.safeParse(raised.document);
  if (!result.success) found.push(...translate(result.error.issues, schema, raised.document));
  check(new RawView(raised.document, found));
  if (found.length > 0 || !result.success) return finish("invalid", kind, raised.document);
  return { state: "ready", document: result.data as Document, kind, raw: raised.document, issues: [] };
}

function isObject(value: unknown): value is Raw {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function kindOf(value: Raw, fitting: readonly Kind[], faults: Fault[]): Kind | undefined {
  const kind = Object.hasOwn(value, "kind") ? value["kind"] : undefined;
  if (isKind(kind) && fitting.includes(kind)) return kind;
  const near = typeof kind === "string" ? nearestName(kind, fitting) : undefined;
  const code = kind === undefined ? "missing" : isKind(kind) ? "wrong-kind" : "wrong-choice";
  faults.push({
    path: "kind",
    code,
    found: show(kind),
    accepted: oneOf(fitting),
    example: JSON.stringify(near ?? fitting[0]),
  });
  return undefined;
}

/** Migrates a document and the documents inside it. A missing version is left for the schema to report. */
function raiseVersions(value: Raw, kind: Kind, path: string, faults: Fault[]): { document: Raw; newer: boolean } {
  const migrated = migrate(value, kinds[kind].versions);
  if (migrated.kind === "newer") {
    const accepted = `version ${migrated.current} or older`;
    faults.push({
      path: path === "" ? "version" : `${path}.version`,
      code: "newer-version",
      found: String(migrated.version),
      accepted,
      example: "",
    });
    return { document: value, newer: true };
  }
  let document = migrated.kind === "current" ? migrated.document : value;
  let newer = false;
  for (const [field, fitting] of Object.entries(kinds[kind].references)) {
    const inner = Object.hasOwn(document, field) ? document[field] : undefined;
    if (!isObject(inner)) continue;
    const innerKind = isKind(inner["kind"]) && fitting.includes(inner["kind"]) ? inner["kind"] : undefined;
    if (innerKind === undefined) continue;
    const raised = raiseVersions(inner, innerKind, path === "" ? field : `${path}.${field}`, faults);
    newer ||= raised.newer;
    document = { ...document, [field]: raised.document };
  }
  return { document, newer };
}

/** One fault a place: what the schema said there comes first. */
function unique(faults: readonly Fault[]): Fault[] {
  const seen = new Set<string>();
  return faults.filter((fault) => {
    const key =
      fault.code === "unknown-field" || fault.code === "duplicate-key" ? `${fault.code} ${fault.path}` : fault.path;
    const first = fault.path === "" || !seen.has(key);
    seen.add(key);
    return first;
  });
}
