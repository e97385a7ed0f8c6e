import type { Kind, Raw } from "@delaywright/documents";

const names: Readonly<Record<Kind, string>> = Object.freeze({
  plan: "New plan",
  rocket: "New rocket",
  motor: "New motor type",
  "motor-in-hand": "New motor in hand",
  tool: "New tool",
  field: "New field",
  flyer: "New flyer",
  "rule-set": "New rule set",
  log: "New log",
  flight: "New flight",
  library: "Library",
});

/**
 * The smallest start of a new document: its kind and a name, and nothing that pretends to be measured.
 *
 * @example
 * blankDocument("rocket"); // { kind: "rocket", version: 1, name: "New rocket" }
 */
export function blankDocument(kind: Kind, name: string = names[kind]): Raw {
  return { kind, version: 1, name };
}
