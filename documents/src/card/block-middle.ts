import { cardFlightRows, cardWarnings, codeNote, moreWords, seeWords, cardWords as words } from "../words/card.en.js";
import { verdictWords } from "../words/check-lines.en.js";
import { wordsForCheck } from "../words/checks.en.js";
import { type Block, type BodyInputs, type CardAmount, shownText as h, LONG } from "./block.js";
import { checksWith, checkText } from "./block-top.js";
import { type CardCode, LARGEST_CARD_CODE } from "./card-code.js";
import type { CardData } from "./card-data.js";
import { codeSide, GAP } from "./card-style.js";
import { linesOf } from "./fit.js";
import { codePath } from "./qr-path.js";

/** The flight, beside the code. */
export function midOf(
  { card, code: whole, units, width }: BodyInputs,
  { tight, flight, code: withCode }: CardAmount,
): Block {
  const code = withCode ? whole : null;
  const side = tight ? codeSide.tight : codeSide.usual;
  const own = code === null ? width : width - side - GAP;
  const rows = cardFlightRows(card, units, flight ? (tight ? "brief" : "all") : "least");
  const table = rows
    .map(({ label, value }) => `<tr><th scope="row">${h(label)}</th><td>${h(value, 240)}</td></tr>`)
    .join("");
  const lines = rows.reduce((sum, row) => sum + Math.max(linesOf(row.value, own - 6.2), linesOf(row.label, 5.7)), 0);
  const note = code === null ? "" : `${words.code}.${codeNote(code.thinned)}`;
  const beside = code === null ? 0 : side / 1.22 + 0.9 * linesOf(note, side);
  return {
    html: `<section class="fc-mid"><table class="fc-rows"><tbody>${table}</tbody></table>${code === null ? "" : codeOf(code, note, tight)}</section>`,
    lines: 0.6 + Math.max(1.05 * lines, beside),
  };
}

function codeOf(code: CardCode, note: string, tight: boolean): string {
  const { size, path } = codePath(code.text, LARGEST_CARD_CODE);
  return `<div class="${tight ? "fc-code fc-code-tight" : "fc-code"}"><svg viewBox="0 0 ${size} ${size}" role="img" aria-label="QR code of this plan" shape-rendering="crispEdges"><path fill="#fff" d="M0 0h${size}v${size}H0z"/><path fill="#000" d="${path}"/></svg><p>${h(note)}</p></div>`;
}

/** What several rules look at is named once. */
function nameOnce(title: string, all: readonly string[]): string {
  const rules = all.filter((each) => each === title).length;
  return rules === 1 ? title : `${title} (${rules} rules)`;
}

/** Looks, what was not checked, and what to mind. */
export function checksOf(inputs: BodyInputs, amount: CardAmount): Block {
  const { card, code, width } = inputs;
  const looks = checksWith("look", inputs).map((check) => checkText(check, amount.lookMeanings));
  const shown = amount.looksApart || looks.length === 0 ? looks : [looks.join("; ")];
  const missing = card.checks.filter(isMissing).map((check) => wordsForCheck(check.code).title);
  const named = [...new Set(missing)].map((title) => nameOnce(title, missing));
  const warnings = cardWarnings(card);
  const mind = listed(warnings, amount.warnings, ". ");
  const not = listed(named, amount.notChecked, ", ");
  const others = [
    ...(not === "" ? [] : [`${words.notChecked} (${missing.length}): ${not}.`]),
    ...(mind === "" ? [] : [`${words.assumed}${mind === seeWords ? ` (${warnings.length})` : ""}: ${mind}.`]),
    ...(code === null ? [words.noCode] : amount.code ? [] : [words.noRoom]),
  ];
  const told = amount.looksApart ? others : [others.join(" ")].filter((text) => text !== "");
  const word = `<span class="fc-word">${verdictWords.look}</span>`;
  const items = [
    ...(card.checks.length === 0 ? [words.allPass] : []).map((text) => ({ text, html: h(text) })),
    ...shown.map((text) => ({ text: `look   ${text}`, html: `${word} ${h(text, LONG)}` })),
    ...told.map((text) => ({ text, html: h(text, LONG) })),
  ];
  return {
    html: `<section class="fc-checks"><h2>${words.notPassing}</h2><ul>${items.map(({ html }) => `<li>${html}</li>`).join("")}</ul></section>`,
    lines: 1.6 + items.reduce((sum, { text }) => sum + linesOf(text, width - 0.7), 0),
  };
}

const isMissing = ({ verdict }: CardData["checks"][number]): boolean => !["stop", "look"].includes(verdict);

/** So many of a list, and how many more there are. */
function listed(texts: readonly string[], most: number, joint: string): string {
  const left = texts.length - most;
  if (most <= 0 && left > 0) return seeWords;
  const shown = texts.slice(0, most);
  return left > 0 ? [...shown, moreWords(left)].join(joint) : shown.join(joint);
}
