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

/** Others get their turn after each of several large files. */
async function saveLarge(name: string, text: string): Promise<void> {
  saveText(name, text, JSON_TYPE);
  await new Promise((resolve) => setTimeout(resolve));
}

/** Offers the whole bench as files to keep. */
export async function exportBench(day: string): Promise<void> {
  const texts = await exportInParts();
  for (const [index, name] of exportNames(texts.length, day).entries()) await saveLarge(name, texts[index] ?? "");
}

/** Offers one document as a file: with all that it refers to as one library, where it refers to anything. */
export async function exportOne(path: string, refers: boolean): Promise<void> {
  if (!refers) {
    saveText(path, rawFile(path) ?? "", JSON_TYPE);
    return;
  }
  const texts = await exportDocuments([path]);
  const stem = path.replace(/(\.[a-z-]+)?\.json$/, "");
  for (const [index, text] of texts.entries()) {
    const count = texts.length === 1 ? "" : `-${index + 1}`;
    await saveLarge(`${stem}${count}.library.json`, text);
  }
}
