import { shorten } from "../issue.js";
import { cardMotorLines, cardRocketLines, cardWords as words } from "../words/card.en.js";
import { type CheckLine, checkFigures, checkLine } from "../words/check-lines.en.js";
import { doNotFlyWords } from "../words/headline.en.js";
import { upperFirst } from "../words/numbers.en.js";
import { type Block, BOLD, type BodyInputs, type CardAmount, shownText as h, LONG, NAME, SHORT_NAME } from "./block.js";
import { GAP } from "./card-style.js";
import { linesOf } from "./fit.js";

export function headOf({ card }: BodyInputs, { tight }: CardAmount): Block {
  const { plan, field, date } = card.context;
  const most = tight ? SHORT_NAME : NAME;
  const first = [shorten(plan, most), ...(field === undefined ? [] : [shorten(field, SHORT_NAME)])].join(", ");
  const second = [...(date === undefined ? [] : [`for ${date}`]), `computed ${shorten(card.computed, 40)}`].join(", ");
  return {
    html: `<header class="fc-head"><h1>${words.title}</h1><p>${h(first)}<br>${h(second)}</p></header>`,
    lines: 1 + linesOf(first, 33) + 0.4,
  };
}

export function blanksOf({ card: { flyer } }: BodyInputs): Block {
  const { name = "", certification = null, association = null } = flyer ?? {};
  const level = [certification, association].filter((part) => part !== null).join(", ");
  const blank = (word: string, value: string, most: number): string =>
    `<p>${word}${value === "" ? "" : `<b>${h(value, most)}</b>`}</p>`;
  return {
    html: `<div class="fc-blanks">${blank(words.flyer, name, 26)}${blank(words.level, level, 16)}${blank(words.number, "", 0)}${blank(words.pad, "", 0)}</div>`,
    lines: 1.8,
  };
}

/** One check on a line: its name, its figures, and what it means where that is wanted. */
export function checkText(line: CheckLine, meanings: boolean): string {
  const { name, meaning } = line;
  const figures = checkFigures(line);
  const head = figures === "" ? name : `${name}: ${figures}`;
  return [head, ...(meanings && meaning !== "" ? [meaning.replace(/\.$/, "")] : [])].join(" – ");
}

/** The checks with one verdict. */
export function checksWith(verdict: string, { card, units }: BodyInputs): CheckLine[] {
  return card.checks.filter((check) => check.verdict === verdict).map((check) => checkLine(check, units));
}

export function stopsOf(inputs: BodyInputs, { stopMeanings, stopsApart }: CardAmount): Block {
  const { card, width } = inputs;
  const over = card.overCut?.doNotFly && card.given.removedDepth !== null ? [upperFirst(doNotFlyWords)] : [];
  const stops = [...over, ...checksWith("stop", inputs).map((check) => checkText(check, stopMeanings))];
  if (stops.length === 0) return { html: "", lines: 0 };
  const texts = stopsApart ? stops : [stops.join("; ")];
  const two = !stopMeanings && stopsApart;
  const column = two ? (width - 1.2 - GAP) / 2 : width - 1.2;
  const lines = texts.reduce((sum, text) => sum + linesOf(text, column), 0);
  const items = texts.map((text) => `<li>${h(text, LONG)}</li>`).join("");
  return {
    html: `<section class="fc-stop"><h2>${words.stop}</h2><ul${two ? ' class="fc-stop-two"' : ""}>${items}</ul></section>`,
    lines: 2 + (two ? Math.ceil((lines + 1) / 2) : lines),
  };
}

export function craftOf({ card, units, width }: BodyInputs, { tight }: CardAmount): Block {
  const most = tight ? SHORT_NAME : NAME;
  const side = (name: string, lines: readonly string[]): Block => ({
    html: `<div><h2>${h(name, most)}</h2>${lines.map((line) => `<p>${h(line, 130)}</p>`).join("")}</div>`,
    lines:
      1.2 * linesOf(shorten(name, most), (width - GAP) / 2 / (1.2 * BOLD)) +
      lines.reduce((sum, line) => sum + linesOf(shorten(line, 130), (width - GAP) / 2), 0),
  });
  const rocket = side(card.rocket.name, cardRocketLines(card, units));
  const motor = side(card.motor.name, cardMotorLines(card, units));
  return {
    html: `<section class="fc-craft">${rocket.html}${motor.html}</section>`,
    lines: Math.max(rocket.lines, motor.lines) + 0.8,
  };
}
