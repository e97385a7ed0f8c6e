import type { Block, BodyInputs, CardAmount } from "./block.js";
import { delayOf } from "./block-delay.js";
import { afterOf, cautionsOf, footOf, signOf } from "./block-foot.js";
import { checksOf, midOf } from "./block-middle.js";
import { blanksOf, craftOf, headOf, stopsOf } from "./block-top.js";

/** The card as markup, so much of it, and how many lines it is reckoned to take. */
export function cardBody(inputs: BodyInputs, amount: CardAmount): Block {
  const blocks = [
    headOf(inputs, amount),
    blanksOf(inputs),
    stopsOf(inputs, amount),
    craftOf(inputs, amount),
    delayOf(inputs, amount),
    midOf(inputs, amount),
    checksOf(inputs, amount),
    cautionsOf(inputs, amount),
    signOf(),
    ...(amount.after ? [afterOf()] : []),
    footOf(inputs, amount),
  ];
  return {
    html: `<article class="flight-card" lang="en">${blocks.map(({ html }) => html).join("")}</article>`,
    lines: blocks.reduce((sum, { lines }) => sum + lines, 0),
  };
}
