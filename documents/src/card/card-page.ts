import type { UnitSystem } from "../quantity/systems.js";
import { cardWords } from "../words/card.en.js";
import type { BodyInputs, CardAmount } from "./block.js";
import { cardBody } from "./card-body.js";
import type { CardCode } from "./card-code.js";
import type { CardData } from "./card-data.js";
import { type CardPaper, roomOf, stylesOf } from "./card-style.js";
import { escaped } from "./html.js";

export interface CardPageOptions {
  readonly paper?: CardPaper;
  readonly units?: UnitSystem;
}

export const defaultCardPageOptions = Object.freeze({ paper: "a5", units: "metric" } as const);

/** A card as a page, and its parts for a page that has others. */
export interface CardPage {
  /** The whole page: one file, no script, nothing from elsewhere. */
  readonly html: string;
  readonly title: string;
  /** Style sheet; every rule but `@page` is for the card alone. */
  readonly styles: string;
  /** Markup of the card: one `article` element. */
  readonly body: string;
  /** Lines that the card is reckoned to take, and those that its paper has. */
  readonly lines: number;
  readonly room: number;
}

const everything: CardAmount = {
  cautions: Number.POSITIVE_INFINITY,
  wholeCautions: true,
  notChecked: Number.POSITIVE_INFINITY,
  warnings: Number.POSITIVE_INFINITY,
  stopMeanings: true,
  lookMeanings: true,
  looksApart: true,
  after: true,
  small: false,
  tight: false,
  flight: true,
  code: true,
  stopsApart: true,
};

/** What gives way first where there is too much; stops and looks themselves never do. */
const savings: readonly Partial<CardAmount>[] = [
  { small: true },
  { cautions: 4 },
  { cautions: 3 },
  { cautions: 2 },
  { warnings: 3 },
  { lookMeanings: false },
  { notChecked: 12 },
  { notChecked: 6 },
  { wholeCautions: false },
  { warnings: 1 },
  { notChecked: 0 },
  { after: false },
  { stopMeanings: false },
  { warnings: 0 },
  { tight: true },
  { looksApart: false },
  { stopsApart: false },
  { code: false },
  { flight: false },
];

/**
 * The flight card as one self-contained page in black ink: one sheet, however much there is to say.
 *
 * Where there is too much, lists are cut with "and n more: see the plan", cautions first; every stop and every look stays.
 * Names and words of documents are text and never markup.
 *
 * @param card what stands on it
 * @param code the plan's code; null: it does not fit, which the card says
 * @param options paper (A5 unless given) and units
 * @example
 * cardPage(cardData(inputs), await cardCode(parts), { paper: "a4" }).html; // "<!doctype html>…"
 */
export function cardPage(card: CardData, code: CardCode | null, options: CardPageOptions = {}): CardPage {
  const { paper, units } = { ...defaultCardPageOptions, ...options };
  let [amount, page] = [everything, composed({ card, code, units }, paper, everything)];
  for (const saving of savings) {
    if (page.lines <= page.room) break;
    amount = { ...amount, ...saving };
    page = composed({ card, code, units }, paper, amount);
  }
  const styles = stylesOf(paper, amount.small);
  const title = `${cardWords.title}: ${card.context.plan}`;
  return {
    html: `<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n<meta name="viewport" content="width=device-width,initial-scale=1">\n<title>${escaped(title)}</title>\n<style>\nhtml,body{margin:0;background:#fff}\n${styles}</style>\n</head>\n<body>\n${page.html}\n</body>\n</html>\n`,
    title,
    styles,
    body: page.html,
    lines: page.lines,
    room: page.room,
  };
}

function composed(inputs: Omit<BodyInputs, "width">, paper: CardPaper, amount: CardAmount) {
  const { width, lines: room } = roomOf(paper, amount.small);
  return { ...cardBody({ ...inputs, width }, amount), room };
}
