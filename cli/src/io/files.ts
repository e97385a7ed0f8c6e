import { readdir, readFile, stat } from "node:fs/promises";
import { dirname, isAbsolute, join } from "node:path";
import type { FileFailure } from "@delaywright/documents";
import type { Files } from "./io.js";

const failures: Readonly<Record<string, FileFailure>> = Object.freeze({
  ENOENT: "missing",
  ENOTDIR: "missing",
  ENAMETOOLONG: "missing",
  ELOOP: "missing",
  ERR_INVALID_ARG_VALUE: "missing",
  EISDIR: "not-a-file",
});

function reasonOf(error: unknown): FileFailure {
  return failures[(error as NodeJS.ErrnoException).code ?? ""] ?? "not-allowed";
}

/** Files on the disk. Their size is looked at before they are read. */
export const diskFiles: Files = {
  async read(path) {
    const { LARGEST_FILE } = await import("@delaywright/documents");
    try {
      const facts = await stat(path);
      if (!facts.isFile()) return { ok: false, reason: "not-a-file" };
      if (facts.size > LARGEST_FILE) return { ok: false, reason: "too-large" };
      return { ok: true, bytes: await readFile(path) };
    } catch (error) {
      return { ok: false, reason: reasonOf(error) };
    }
  },
  resolve: (base, relative) => (isAbsolute(relative) ? relative : join(dirname(base), relative)),
  async list(folder) {
    try {
      return (await readdir(folder)).sort();
    } catch {
      return [];
    }
  },
};
