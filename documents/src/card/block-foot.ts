import { shorten } from "../issue.js";
import { cardBasis, moreWords, cardWords as words } from "../words/card.en.js";
import { type CautionTopic, cautions } from "../words/cautions.en.js";
import { kindOfCut } from "../words/cut.en.js";
import { upperFirst } from "../words/numbers.en.js";
import { type Block, BOLD, type BodyInputs, type CardAmount, shownText as h } from "./block.js";
import type { CardData } from "./card-data.js";
import { GAP } from "./card-style.js";
import { linesOf } from "./fit.js";

/** What belongs on a card, most needed at the pad first. */
function topicsOf({ asCut, toCut, given }: CardData): CautionTopic[] {
  const cutting =
    asCut === null && toCut !== null && ["cut", "not-shown"].includes(kindOfCut(toCut, given.removedDepth));
  return ["igniter", "late-charge", ...(cutting ? (["cutting"] as const) : []), "retention", "charge"];
}

export function cautionsOf({ card, width }: BodyInputs, { cautions: most, wholeCautions, tight }: CardAmount): Block {
  const topics = topicsOf(card);
  const shown = topics.slice(0, most).map((topic) => {
    const [first = "", ...rest] = cautions[topic];
    return { first, rest: wholeCautions ? rest.join(" ") : "" };
  });
  const told = (topic: CautionTopic, index: number): number =>
    index < most ? (wholeCautions ? cautions[topic].length : 1) : 0;
  const left = topics.reduce((sum, topic, index) => sum + cautions[topic].length - told(topic, index), 0);
  const more = left > 0 ? upperFirst(`${moreWords(left)}.`) : "";
  const last = shown.at(-1);
  if (last !== undefined && more !== "") last.rest = `${last.rest} ${more}`;
  const column = tight ? width - 0.9 : (width - GAP) / 2 - 0.9;
  const lines = shown.reduce((sum, { first, rest }) => sum + linesOf(`${first} ${rest}`, column / 1.03) + 0.2, 0);
  return {
    html: `<section class="fc-cautions${tight ? " fc-cautions-tight" : ""}">${shown.map(({ first, rest }) => `<p><b>${h(first)}</b> ${h(rest, 500)}</p>`).join("")}</section>`,
    lines: tight ? lines + 0.6 : lines / 2 + 1.4,
  };
}

export function signOf(): Block {
  return {
    html: `<div class="fc-sign"><p>${words.signFlyer}</p><p>${words.signOfficer}</p></div>`,
    lines: 3.4,
  };
}

export function afterOf(): Block {
  const boxes = words.after.map((word) => `<span><i></i>${word}</span>`).join("");
  return {
    html: `<div class="fc-after">${boxes}<span>${words.flown} <span class="fc-blank"></span> ${words.second}</span></div>`,
    lines: 1.4,
  };
}

export function footOf({ card, width }: BodyInputs, { tight }: CardAmount): Block {
  const basis = shorten(cardBasis(card, tight), 600);
  return {
    html: `<footer class="fc-foot"><p>${h(basis, 600)}</p><p><b>${words.authority}</b></p></footer>`,
    lines: linesOf(basis, width) + linesOf(words.authority, width / BOLD) + 0.3,
  };
}
