import type { Kind } from "@delaywright/documents";
import type { Shelf } from "../app/router.js";

/** Names of the libraries. */
export const shelfTitles: Readonly<Record<Shelf, string>> = Object.freeze({
  rockets: "Rockets",
  motors: "Motor types",
  hands: "Motors in hand",
  tools: "Tools",
  fields: "Fields",
  flyers: "Flyers",
  rules: "Rule sets",
  flights: "Flights",
  others: "Other documents",
});

const kindsOfShelves: Readonly<Partial<Record<Shelf, Kind>>> = Object.freeze({
  rockets: "rocket",
  motors: "motor",
  hands: "motor-in-hand",
  tools: "tool",
  fields: "field",
  flyers: "flyer",
  rules: "rule-set",
  flights: "flight",
});

/** The kind that a library holds; undefined for what has no library of its own. */
export function kindOfShelf(shelf: Shelf): Kind | undefined {
  return kindsOfShelves[shelf];
}

/** What is known of a document without reading it. */
interface Shelved {
  readonly path: string;
  readonly kind: Kind | null;
}

/**
 * The library in which a document stands; null for a plan. What cannot be read stands where its file's name puts it.
 *
 * @example
 * shelfOf({ path: "demo-76.rocket.json", kind: null }); // "rockets"
 */
export function shelfOf({ path, kind }: Shelved): Shelf | null {
  const said = kind ?? /\.([a-z-]+)\.json$/.exec(path)?.[1];
  if (said === "plan") return null;
  const found = Object.entries(kindsOfShelves).find(([, each]) => each === said);
  return (found?.[0] as Shelf | undefined) ?? "others";
}
