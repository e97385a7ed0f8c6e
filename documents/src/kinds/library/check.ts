import type { RawView } from "../raw.js";

/** Each document of a library has one name, and no library is in another. */
export function checkLibrary(library: RawView): void {
  const documents = library.at("documents").list;
  if (library.has("files") && library.at("files").list.length !== documents.length) {
    library.at("files").report("lengths-differ", `a list of ${documents.length}, one for each document`);
  }
  for (const each of documents) {
    if (each.at("kind").text === "library") each.at("kind").report("wrong-choice", "any kind but library", '"rocket"');
  }
}
