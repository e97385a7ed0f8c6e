import { type FileSource, utf8 } from "./file-source.js";

/**
 * The files of a library, by the names under which its documents refer to each other; anything else comes from where the library came from.
 *
 * @param files where the library itself came from
 * @param library path of the library
 * @param names the library's `files`
 * @param documents the library's `documents`
 */
export function libraryFiles(
  files: FileSource,
  library: string,
  names: readonly unknown[],
  documents: readonly unknown[],
): FileSource {
  const own = new Map<string, unknown>();
  for (const [index, name] of names.entries()) {
    if (typeof name === "string") own.set(files.resolve(library, name), documents[index]);
  }
  return {
    resolve: (base, relative) => files.resolve(base, relative),
    read(path) {
      const document = own.get(path);
      return document === undefined
        ? files.read(path)
        : Promise.resolve({ ok: true, bytes: utf8(JSON.stringify(document)) });
    },
  };
}
