import { type Issue, show } from "../issue.js";
import { parseQuantity } from "../quantity/parse.js";
import type { Dimension } from "../quantity/units.js";
import { aboveZeroWords, deskNeeds } from "../words/card-desk.en.js";
import type { DeskAssumption, DeskEntry, DeskField, DeskFields } from "./desk-entry.js";

/** Reads the fields of an entry, and keeps what is missing and what was assumed. */
export class Desk {
  readonly issues: Issue[] = [];
  readonly assumptions: DeskAssumption[] = [];
  readonly entry: DeskEntry;

  constructor(entry: DeskEntry) {
    this.entry = entry;
  }

  /** A field as typed; undefined where it is empty. */
  text(field: keyof DeskFields): string | undefined {
    const text = this.entry[field]?.trim();
    return text === "" ? undefined : text;
  }

  /** A field without which there is no answer; empty where it is missing, which is told. */
  needed(field: keyof DeskFields, example: string): string {
    const text = this.text(field);
    if (text === undefined) this.missing(field, example);
    return text ?? "";
  }

  /** As `needed`, in SI units; undefined where it is missing or no such quantity, which is told. */
  amount(field: keyof DeskFields, dimension: Dimension, example: string): number | undefined {
    const text = this.needed(field, example);
    if (text === "") return undefined;
    const parsed = parseQuantity(text, dimension);
    if (parsed.ok && parsed.value > 0) return parsed.value;
    const fault = parsed.ok ? { code: "out-of-range", accepted: aboveZeroWords } : parsed.issue;
    this.issues.push({ file: "", path: field, code: fault.code, found: show(text), accepted: fault.accepted, example });
    return undefined;
  }

  /** A field, or what is assumed for it. */
  or(field: keyof DeskFields, otherwise: () => string): string {
    const text = this.text(field);
    if (text !== undefined) return text;
    const value = otherwise();
    this.assume(field, value);
    return value;
  }

  assume(field: DeskField, value: string): void {
    this.assumptions.push({ field, value });
  }

  missing(field: DeskField, example: string): void {
    const accepted = deskNeeds[field] ?? "";
    this.issues.push({ file: "", path: field, code: "missing", found: "nothing", accepted, example });
  }
}
