import { type FileSource, memoryFiles, resolvePath } from "@delaywright/documents";
import { entryNow } from "../store/index.js";

/** The documents of the store as files; each is written out only when it is read. */
export const storeFiles: FileSource = {
  read(path) {
    const entry = entryNow(path);
    if (entry === undefined) return memoryFiles({}).read(path);
    return memoryFiles({ [path]: entry.raw === null ? (entry.text ?? "") : JSON.stringify(entry.raw) }).read(path);
  },
  resolve: resolvePath,
};
