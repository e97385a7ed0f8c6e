/** The words that stand in the address of a library page, by the kind of its documents. */
const shelves: Readonly<Record<string, string>> = Object.freeze({
  plan: "plan",
  rocket: "rockets",
  motor: "motors",
  "motor-in-hand": "hands",
  tool: "tools",
  field: "fields",
  flyer: "flyers",
  "rule-set": "rules",
  flight: "flights",
});

/** The address of a document's own page; undefined for kinds without one. */
export function addressOfDocument(kind: string, path: string): string | undefined {
  return Object.hasOwn(shelves, kind) ? `#/${shelves[kind]}/${encodeURIComponent(path)}` : undefined;
}
