import { type Imported, type Issue, importFiles, LARGEST_FILE } from "@delaywright/documents";
import { gzipped } from "./gzip.js";

/** A file as the browser gives it, or its bytes. */
export type Incoming = File | { readonly name: string; readonly bytes: Uint8Array | Blob };

/** What files hold, and what was not taken. */
export interface ReadFiles extends Pick<Imported, "entries" | "curves" | "issues"> {
  /** Files that logs were read from, compressed. */
  readonly records: readonly { readonly path: string; readonly gzip: Blob }[];
}

/** Files under the names that they have with their folders: a file that is handed to a worker forgets them. */
export function withFolders(files: readonly Incoming[]): readonly Exclude<Incoming, File>[] {
  return files.map((file) =>
    file instanceof Blob ? { name: file.webkitRelativePath || file.name, bytes: file } : file,
  );
}

/** Reads files; those that are too large are not even looked into. */
export async function readIncoming(files: readonly Incoming[]): Promise<ReadFiles> {
  const given: { name: string; bytes: Uint8Array }[] = [];
  const refused: Issue[] = [];
  for (const { name, bytes } of withFolders(files)) {
    const size = bytes instanceof Blob ? bytes.size : bytes.length;
    if (size > LARGEST_FILE) refused.push(tooLarge(name, size));
    else given.push({ name, bytes: bytes instanceof Blob ? new Uint8Array(await bytes.arrayBuffer()) : bytes });
  }
  const { entries, curves, records, issues } = await importFiles(given);
  const packed = records.map(async ({ path, bytes, gzip }) => {
    const own = new Uint8Array(bytes);
    return { path, gzip: gzip ? new Blob([own]) : await gzipped(own) };
  });
  return { entries, curves, records: await Promise.all(packed), issues: [...refused, ...issues] };
}

function tooLarge(file: string, size: number): Issue {
  const accepted = `at most ${LARGEST_FILE} bytes`;
  return { file, path: "", code: "file-too-large", found: `${size} bytes`, accepted, example: "" };
}
