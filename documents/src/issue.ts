/** One thing wrong in a document, with enough to mend it. Codes and paths are stable, words may change. */
export interface Issue {
  /** The file it stands in, as it was named by whoever asked for it. */
  readonly file: string;
  /** Where in the file, for example `fins[0].root`; empty for the file as a whole. */
  readonly path: string;
  /** Stable identifier in kebab case, for example `unit-missing`. */
  readonly code: string;
  /** What was found, ready to show: texts in quotes, `nothing` where a field is missing. */
  readonly found: string;
  /** What is accepted, as words that follow "accepted:". */
  readonly accepted: string;
  /** A value that would be right, ready to show; empty where there is none. */
  readonly example: string;
}

/** An issue that does not yet know its file. */
export type Fault = Omit<Issue, "file">;

/** Joins a path into a document: keys with dots, indices in brackets. */
export function joinPath(parts: readonly PropertyKey[]): string {
  let path = "";
  for (const part of parts) {
    if (typeof part === "number") path += `[${part}]`;
    else path += path === "" ? shorten(String(part), 40) : `.${shorten(String(part), 40)}`;
  }
  return path;
}

/** Cuts a text that is too long to show. */
export function shorten(text: string, most: number): string {
  return text.length > most ? `${text.slice(0, most - 1)}…` : text;
}

/** A value as it is shown in a message: texts in quotes, lists and objects by their kind. */
export function show(value: unknown): string {
  if (value === undefined) return "nothing";
  if (value === null) return "null";
  if (typeof value === "string") return shorten(JSON.stringify(value), 70);
  if (typeof value === "number" || typeof value === "boolean") return String(value);
  return Array.isArray(value) ? `a list of ${value.length}` : "an object";
}
