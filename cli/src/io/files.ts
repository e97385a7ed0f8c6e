import { readdir, readFile, rename, rm, stat, writeFile } from "node:fs/promises";
import { dirname, isAbsolute, join } from "node:path";
import process from "node:process";
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

async function readUpTo(path: string, most: number): ReturnType<Files["read"]> {
  try {
    const facts = await stat(path);
    if (!facts.isFile()) return { ok: false, reason: "not-a-file" };
    if (facts.size > most) return { ok: false, reason: "too-large" };
    return { ok: true, bytes: await readFile(path) };
  } catch (error) {
    return { ok: false, reason: reasonOf(error) };
  }
}

/** Files on the disk. Their size is looked at before they are read. */
export const diskFiles: Files = {
  async read(path) {
    const { LARGEST_FILE } = await import("@delaywright/documents");
    return readUpTo(path, LARGEST_FILE);
  },
  async readRecord(path) {
    const { LARGEST_LOG } = await import("@delaywright/documents");
    return readUpTo(path, LARGEST_LOG);
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

const writeFailures: Readonly<Record<string, string>> = Object.freeze({
  ENOENT: "there is no such folder",
  ENOTDIR: "there is no such folder",
  EISDIR: "it is a folder",
  EACCES: "this is not allowed",
  EPERM: "this is not allowed",
  EROFS: "this is not allowed",
  ENOSPC: "the disk is full",
});

/** Writes beside the file first and then renames, so that nobody ever reads half of it. */
export async function writeWhole(path: string, text: string): Promise<string | null> {
  const beside = `${path}.${process.pid}.tmp`;
  try {
    const there = await stat(path).catch(() => null);
    if (there !== null && !there.isFile()) return there.isDirectory() ? "it is a folder" : "it is no file";
    await writeFile(beside, text, { flag: "wx" });
    await rename(beside, path);
    return null;
  } catch (error) {
    await rm(beside, { force: true }).catch(() => {});
    const { code = "" } = error as NodeJS.ErrnoException;
    return writeFailures[code] ?? (code === "" ? String(error) : code);
  }
}
