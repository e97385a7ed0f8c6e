import { readField } from "../store/field.js";
import { fieldWithin, type PlanDocuments } from "./plan-documents.js";

/** Where a field stands. */
export interface PlaceOfField {
  readonly path: string;
  readonly field: string;
}

const partNames = ["rocket", "motor", "field", "flyer"] as const;

/**
 * Where a field that words name, with the kind of its document, is written in a plan; where the plan has no such document,
 * where one is chosen.
 *
 * @param named `rocket: bay.friction`
 * @returns null where no plan writes it
 * @example
 * placeOfField("plan: site.cloudCover", documents); // { path: "demo.plan.json", field: "site.cloudCover" }
 */
export function placeOfField(named: string, documents: PlanDocuments): PlaceOfField | null {
  const [kind = "", field = ""] = named.split(": ");
  const { path } = documents.plan;
  if (field === "") return null;
  if (kind === "plan") return { path, field };
  const name = partNames.find((each) => each === kind);
  if (name === undefined) return null;
  const part = documents[name];
  return part === null ? { path, field: name } : { path: part.path, field: fieldWithin(part, field) };
}

/** Of several fields that say a thing together the first that is empty, else the first. */
export function placeToFill(named: readonly string[], documents: PlanDocuments): PlaceOfField | null {
  const places = named.flatMap((each) => placeOfField(each, documents) ?? []);
  return places.find((place) => isEmpty(place, documents)) ?? places[0] ?? null;
}

function isEmpty({ path, field }: PlaceOfField, { plan, rocket, motor, field: place, flyer }: PlanDocuments): boolean {
  if (path === plan.path) return readField(plan.raw, field) === undefined;
  const part = [rocket, motor, place, flyer].find((each) => each?.path === path);
  return readField(part?.raw, field) === undefined;
}
