import { type Fault, joinPath, shorten } from "../issue.js";

/** Deepest nesting of lists and objects that is read. */
const DEEPEST = 64;

export type ParsedJson =
  | { readonly ok: true; readonly value: unknown; readonly faults: readonly Fault[] }
  /** `line`: where reading stopped, from 1. */
  | { readonly ok: false; readonly line: number; readonly faults: readonly Fault[] };

/** Where reading stopped, and why. */
class Stop extends Error {
  readonly code: "json-syntax" | "too-deep";
  readonly position: number;
  readonly accepted: string;
  constructor(code: "json-syntax" | "too-deep", position: number, accepted: string) {
    super(code);
    this.code = code;
    this.position = position;
    this.accepted = accepted;
  }
}

/**
 * Reads JSON, strictly, and says where it breaks.
 *
 * Keys that stand twice and `__proto__` keys are reported and left out; nesting deeper than 64 is refused.
 *
 * @param text the JSON text
 * @returns the value with what is wrong with its keys, or the place of the syntax error by line and column
 * @source ECMA-404, The JSON data interchange syntax
 * @example
 * parseJson('{ "a": 1 }'); // { ok: true, value: { a: 1 }, faults: [] }
 */
export function parseJson(text: string): ParsedJson {
  const reader = new Reader(text);
  try {
    const value = reader.document();
    return { ok: true, value, faults: reader.faults };
  } catch (error) {
    if (!(error instanceof Stop)) throw error;
    const line = text.slice(0, error.position).split("\n").length;
    return { ok: false, line, faults: [...reader.faults, faultOf(error, text, line)] };
  }
}

function faultOf(stop: Stop, text: string, line: number): Fault {
  const column = stop.position - text.slice(0, stop.position).lastIndexOf("\n");
  const here = text.slice(stop.position, stop.position + 12).split("\n")[0] ?? "";
  const found = stop.position >= text.length ? "the end of the file" : shorten(JSON.stringify(here), 30);
  return {
    path: "",
    code: stop.code,
    found: `${found} at line ${line}, column ${column}`,
    accepted: stop.accepted,
    example: "",
  };
}

class Reader {
  readonly faults: Fault[] = [];
  private at = 0;
  private depth = 0;
  private readonly path: (string | number)[] = [];
  private readonly text: string;

  constructor(text: string) {
    this.text = text;
  }

  document(): unknown {
    const value = this.value();
    this.space();
    if (this.at < this.text.length) throw new Stop("json-syntax", this.at, "the end of the file");
    return value;
  }

  private value(): unknown {
    this.space();
    const sign = this.text[this.at];
    if (sign === "{") return this.object();
    if (sign === "[") return this.list();
    if (sign === '"') return this.string();
    for (const [word, value] of [
      ["true", true],
      ["false", false],
      ["null", null],
    ] as const) {
      if (this.text.startsWith(word, this.at)) {
        this.at += word.length;
        return value;
      }
    }
    return this.number();
  }

  private object(): Record<string, unknown> {
    const object: Record<string, unknown> = {};
    this.enter();
    if (!this.taken("}")) {
      do {
        this.space();
        if (this.text[this.at] !== '"') throw new Stop("json-syntax", this.at, 'a key in double quotes, as "name"');
        const key = this.string();
        this.need(":", "a colon after the key");
        this.path.push(key);
        const value = this.value();
        if (key === "__proto__") this.report("key-refused", "another key");
        else if (Object.hasOwn(object, key)) this.report("duplicate-key", "each key once");
        else object[key] = value;
        this.path.pop();
      } while (this.taken(","));
      this.need("}", "a comma or a closing brace");
    }
    this.depth -= 1;
    return object;
  }

  private list(): unknown[] {
    const list: unknown[] = [];
    this.enter();
    if (!this.taken("]")) {
      do {
        this.path.push(list.length);
        list.push(this.value());
        this.path.pop();
      } while (this.taken(","));
      this.need("]", "a comma or a closing bracket");
    }
    this.depth -= 1;
    return list;
  }

  private string(): string {
    const start = this.at;
    for (this.at += 1; this.at < this.text.length; this.at += 1) {
      const code = this.text.charCodeAt(this.at);
      if (code < 0x20) throw new Stop("json-syntax", this.at, "a closing quote on the same line");
      if (code === 0x5c) this.at += 1;
      else if (code === 0x22) {
        this.at += 1;
        const parsed = decodeString(this.text.slice(start, this.at));
        if (parsed === undefined) throw new Stop("json-syntax", start, "a text whose back-slashes JSON knows");
        return parsed;
      }
    }
    throw new Stop("json-syntax", start, "a closing quote");
  }

  private number(): number {
    const match = NUMBER.exec(this.text.slice(this.at, this.at + 400));
    const value = match === null ? Number.NaN : Number(match[0]);
    if (match === null)
      throw new Stop(
        "json-syntax",
        this.at,
        "a value: a text in double quotes, a number, true, false, null, a list or an object",
      );
    if (!Number.isFinite(value)) throw new Stop("json-syntax", this.at, "a number of ordinary size");
    this.at += match[0].length;
    return value;
  }

  private enter(): void {
    this.depth += 1;
    if (this.depth > DEEPEST) throw new Stop("too-deep", this.at, `at most ${DEEPEST} lists and objects in each other`);
    this.at += 1;
  }

  private report(code: string, accepted: string): void {
    const key = this.path.at(-1);
    this.faults.push({ path: joinPath(this.path), code, found: JSON.stringify(key), accepted, example: "" });
  }

  private space(): void {
    while (this.at < this.text.length && " \t\r\n".includes(this.text[this.at] ?? "x")) this.at += 1;
  }

  private taken(sign: string): boolean {
    this.space();
    if (this.text[this.at] !== sign) return false;
    this.at += 1;
    return true;
  }

  private need(sign: string, accepted: string): void {
    if (!this.taken(sign)) throw new Stop("json-syntax", this.at, accepted);
  }
}

const NUMBER = /^-?(0|[1-9]\d*)(\.\d+)?([eE][+-]?\d+)?(?![\w.])/;

function decodeString(quoted: string): string | undefined {
  if (!quoted.includes("\\")) return quoted.slice(1, -1);
  try {
    return JSON.parse(quoted) as string;
  } catch {
    return undefined;
  }
}
