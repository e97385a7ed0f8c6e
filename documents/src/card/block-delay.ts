import { shorten } from "../issue.js";
import { type CardDelayCells, cardDelayCells, cardWords as words } from "../words/card.en.js";
import { headline, noDelayWords } from "../words/headline.en.js";
import { upperFirst } from "../words/numbers.en.js";
import { type Block, type BodyInputs, type CardAmount, shownText as h } from "./block.js";
import { linesOf } from "./fit.js";

/** What to cut, and the delays as cut, as suggested and as chosen with their odds. */
export function delayOf({ card, units, width }: BodyInputs, { tight }: CardAmount): Block {
  const head = headline(card);
  const lead = head?.lead ?? noDelayWords;
  const detail = head === null ? "" : upperFirst(head.detail);
  const { asCut, suggested, choice } = card;
  const rows = [
    ...(asCut === null ? [] : [cardDelayCells(words.asCut, asCut, units, tight)]),
    ...(suggested === null ? [] : [cardDelayCells(words.suggested, suggested, units, tight)]),
    ...(choice === null ? [] : [cardDelayCells(words.choice, choice, units, tight)]),
  ].map((row) => ({ ...row, note: shorten(row.note, 90) }));
  const fires = rows.some((row) => row.odds?.fires != null);
  const cells = rows.map(({ name, delay, note, odds }) => {
    const figures =
      odds === null
        ? `<td colspan="${fires ? 6 : 5}">${words.notJudged}</td>`
        : [...(fires ? [odds.fires ?? "–"] : []), odds.clean, odds.holds, odds.below, odds.above, odds.timing]
            .map((cell) => `<td>${h(cell)}</td>`)
            .join("");
    return `<tr><th scope="row">${h(name)}${note === "" ? "" : ` ${h(note)}`}</th><td class="fc-figure">${h(delay)}</td>${figures}</tr>`;
  });
  const blank =
    asCut === null && card.given.delayKind === "adjustable"
      ? `<tr><th scope="row">${words.asCut} (${words.notRead})</th><td colspan="${fires ? 7 : 6}"><span class="fc-blank"></span> ${words.second}</td></tr>`
      : "";
  const columns = [
    words.delay,
    ...(fires ? [words.fires] : []),
    words.clean,
    words.holds,
    words.openBelow,
    words.openAbove,
    words.fromTop,
  ];
  const table =
    rows.length === 0
      ? ""
      : `<table><thead><tr><td></td>${columns.map((column) => `<th scope="col">${column}</th>`).join("")}</tr></thead><tbody>${blank}${cells.join("")}</tbody></table>`;
  return {
    html: `<section class="fc-delay"><p class="fc-lead"><b>${h(lead, 60)}</b> <span>${h(detail, 160)}</span></p>${table}</section>`,
    lines:
      Math.max(1.9, linesOf(detail, width - 1.1 * lead.length)) +
      (rows.length === 0 ? 0 : 2) +
      (blank === "" ? 0 : 1.2) +
      rows.reduce((sum, row) => sum + rowLines(row, width), 0) +
      0.5,
  };
}

function rowLines({ name, note }: CardDelayCells, width: number): number {
  return Math.max(1.25, linesOf(`${name} ${note}`, 0.26 * width) + 0.2);
}
