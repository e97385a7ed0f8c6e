import { type FormPart, field, more } from "./model.js";

/** The name of a document on its own page: first. */
export const nameParts: readonly FormPart[] = [field("name", "Name")];

/** Anything worth remembering: last. */
export const noteParts: readonly FormPart[] = [field("note", "Notes", { long: true })];

/** Name and notes where the document is shown inside something else. */
export const headParts: readonly FormPart[] = [more("Name and notes", [...nameParts, ...noteParts])];
