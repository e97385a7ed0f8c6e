import { type CardPaper, cardPapers } from "@delaywright/documents";

/** A paper that a card can be printed on. */
export interface Paper {
  readonly id: CardPaper;
  readonly label: string;
  /** As it shows on screen [px of 1/96 in]. */
  readonly width: number;
}

const known: Readonly<Record<CardPaper, Omit<Paper, "id">>> = Object.freeze({
  a5: { label: "A5", width: (148 / 25.4) * 96 },
  a4: { label: "A4", width: (210 / 25.4) * 96 },
  letter: { label: "Letter", width: 8.5 * 96 },
});

/** Every paper, the usual one first. */
export const papers: readonly Paper[] = cardPapers.map((id) => ({ id, ...known[id] }));

const KEY = "delaywright-card-paper";

/** The paper that was last chosen on this device. */
export function rememberedPaper(): Paper {
  const [usual] = papers;
  if (usual === undefined) throw new RangeError("a card has a paper");
  try {
    return papers.find(({ id }) => id === localStorage.getItem(KEY)) ?? usual;
  } catch {
    return usual;
  }
}

/** Remembers it, where the browser lets it. */
export function rememberPaper({ id }: Paper): void {
  try {
    localStorage.setItem(KEY, id);
  } catch {
    // it then lasts as long as the page
  }
}

/** The name of a card's file. */
export function cardFileName(plan: string): string {
  return `${plan.replace(/(\.plan)?\.json$/i, "")}.card.html`;
}
