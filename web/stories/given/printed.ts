import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** A text without its spaces: every printer sets them its own way. */
export const close = (text: string): string => text.replace(/\s+/g, "");

/** A printed sheet: its text without spaces, how many pages it takes, and their size [pt]. */
export interface Printed {
  readonly text: string;
  readonly pages: number;
  readonly width: number;
  readonly height: number;
}

/** What stands on a printed sheet. */
export async function printedText(sheet: Buffer): Promise<Printed> {
  const paper = await getDocument({ data: new Uint8Array(sheet), verbosity: 0 }).promise;
  const texts: string[] = [];
  for (let number = 1; number <= paper.numPages; number += 1) {
    const { items } = await (await paper.getPage(number)).getTextContent();
    texts.push(items.map((item) => ("str" in item ? item.str : "")).join(""));
  }
  const { width, height } = (await paper.getPage(1)).getViewport({ scale: 1 });
  const found = { text: close(texts.join("")), pages: paper.numPages, width, height };
  await paper.destroy();
  return found;
}
