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

/**
 * What gives way first where there is too much; stops and looks themselves never do. Cautions are what people get hurt without: lists that only
 * explain go before them, and each keeps its first sentence as long as it can.
 */
const savings: readonly Partial<CardAmount>[] = [
  { small: true },
  { warnings: 3 },
  { notChecked: 12 },
  { lookMeanings: false },
  { notChecked: 6 },
  { warnings: 1 },
  { notChecked: 0 },
  { wholeCautions: false },
  { after: false },
  { warnings: 0 },
  { cautions: 4 },
  { cautions: 3 },
  { stopMeanings: false },
  { cautions: 2 },
  { tight: true },
  { looksApart: false },
  { stopsApart: false },
  { code: false },
  { flight: false },
];

/**
 * The flight card as one self-contained page in black ink: one sheet, however much there is to say.
 *
 * Where there is too much, lists are cut with "and n more: see the plan", cautions after what only explains; every stop and every look stays.
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
  const { amount, page } = fitting((some) => composed({ card, code, units }, paper, some));
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

/** As much as its paper has room for: what one step saved too much is given back to the steps before it, the most needed first. */
function fitting<Page extends { readonly lines: number; readonly room: number }>(
  pageWith: (amount: CardAmount) => Page,
) {
  const tried = (steps: readonly Partial<CardAmount>[]) => {
    const amount: CardAmount = Object.assign({}, everything, ...steps);
    return { amount, page: pageWith(amount), steps };
  };
  const fits = ({ page }: { readonly page: Page }) => page.lines <= page.room;
  let found = tried([]);
  for (const saving of savings) {
    if (fits(found)) break;
    found = tried([...found.steps, saving]);
  }
  for (const saving of [...found.steps].reverse()) {
    const fuller = tried(found.steps.filter((step) => step !== saving));
    if (fits(fuller)) found = fuller;
  }
  return found;
}

function composed(inputs: Omit<BodyInputs, "width">, paper: CardPaper, amount: CardAmount) {
  const { width, lines: room } = roomOf(paper, amount.small);
  return { ...cardBody({ ...inputs, width }, amount), room };
}
