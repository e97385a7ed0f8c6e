import { saveText } from "../parts/save-file.js";
import { exportDocuments, exportInParts, rawFile } from "../store/index.js";

const JSON_TYPE = "application/json";

/**
 * The file names of an export of everything: one, but for very large benches.
 *
 * @param parts how many files it takes
 * @param day on which it is made
 * @example
 * exportNames(2, "2026-05-02"); // ["delaywright-bench-2026-05-02-1.json", "delaywright-bench-2026-05-02-2.json"]
 */
export function exportNames(parts: number, day: string): string[] {
  return Array.from({ length: parts }, (_, index) => {
    const count = parts === 1 ? "" : `-${index + 1}`;
    return `delaywright-bench-${day}${count}.json`;
  });
}

/** Offers the whole bench as files to keep. */
export function exportBench(day: string): void {
  const texts = exportInParts();
  for (const [index, name] of exportNames(texts.length, day).entries()) saveText(name, texts[index] ?? "", JSON_TYPE);
}

/** Offers one document as a file: with all that it refers to as one library, where it refers to anything. */
export function exportOne(path: string, refers: boolean): void {
  const text = refers ? exportDocuments([path]) : (rawFile(path) ?? "");
  const name = refers ? path.replace(/(\.[a-z-]+)?\.json$/, ".library.json") : path;
  saveText(name, text, JSON_TYPE);
}
