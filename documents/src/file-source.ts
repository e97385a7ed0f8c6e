import type { FileFailure } from "./file-failure.js";
import type { ReadBefore } from "./read-before.js";

/** Where files come from: a disk, a browser's store, or memory. */
export interface FileSource {
  /** Reads a whole file; files above `LARGEST_FILE` may be refused without reading them. */
  read(
    path: string,
  ): Promise<{ readonly ok: true; readonly bytes: Uint8Array } | { readonly ok: false; readonly reason: FileFailure }>;
  /** The path of a file that another file names relative to itself. */
  resolve(base: string, relative: string): string;
  /** Documents that were read of it before; left out: every file is read anew. */
  readonly before?: ReadBefore;
}

/**
 * Files held in memory, by path with forward slashes.
 *
 * @param files texts or bytes by path
 * @example
 * memoryFiles({ "demo.rocket.json": "{}" }).resolve("plans/one.json", "../demo.rocket.json"); // "demo.rocket.json"
 */
export function memoryFiles(files: Readonly<Record<string, string | Uint8Array>>): FileSource {
  return {
    read(path) {
      const content = Object.hasOwn(files, path) ? files[path] : undefined;
      if (content === undefined) return Promise.resolve({ ok: false, reason: "missing" });
      return Promise.resolve({ ok: true, bytes: typeof content === "string" ? utf8(content) : content });
    },
    resolve: resolvePath,
  };
}

/** Resolves a relative path against the folder of a file; forward slashes only. */
export function resolvePath(base: string, relative: string): string {
  const parts = relative.startsWith("/") ? [] : base.split("/").slice(0, -1);
  for (const part of relative.split("/")) {
    if (part === "" || part === ".") continue;
    if (part === ".." && parts.length > 0 && parts.at(-1) !== ".." && parts.at(-1) !== "") parts.pop();
    else parts.push(part);
  }
  return (relative.startsWith("/") ? "/" : "") + parts.join("/");
}

interface Encoder {
  encode(text: string): Uint8Array;
}
/** Part of every browser and of Node; named here since this package is typed for neither. */
const { TextEncoder } = globalThis as unknown as { readonly TextEncoder: new () => Encoder };

/** A text as UTF-8 bytes. */
export function utf8(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}
