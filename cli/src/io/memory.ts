import { memoryFiles } from "@delaywright/documents";
import type { Io } from "./io.js";
import { inProcessPool } from "./pool.js";

/** An `Io` that keeps what was written, over files in memory. */
export interface MemoryIo extends Io {
  readonly written: { out: string; err: string; readonly files: Record<string, string> };
}

/**
 * The outside, in memory.
 *
 * @param files texts or bytes by path, with forward slashes
 * @param changed parts of the outside to put in the place of the usual ones
 */
export function memoryIo(files: Readonly<Record<string, string | Uint8Array>>, changed: Partial<Io> = {}): MemoryIo {
  const written = { out: "", err: "", files: {} as Record<string, string> };
  const source = memoryFiles(files);
  return {
    written,
    out: (text) => {
      written.out += text;
    },
    err: (text) => {
      written.err += text;
    },
    files: {
      ...source,
      readRecord: source.read,
      list(folder) {
        const before = folder === "." || folder === "" ? "" : `${folder}/`;
        const inside = Object.keys(files)
          .filter((path) => path.startsWith(before))
          .map((path) => path.slice(before.length));
        return Promise.resolve(inside.filter((name) => !name.includes("/")).sort());
      },
    },
    colour: false,
    progress: { update: () => {}, end: () => {} },
    cores: 1,
    now: () => new Date(2026, 4, 2, 11, 5),
    write(path, text) {
      written.files[path] = text;
      return Promise.resolve(null);
    },
    openPool: () => Promise.resolve(inProcessPool()),
    serveApp: () => Promise.resolve({ ok: false, reason: "not-built" }),
    ...changed,
  };
}
