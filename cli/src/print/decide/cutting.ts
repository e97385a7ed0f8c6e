import { cautions, type DecisionData, showsCuts, twoCutsSentence, whySentences } from "@delaywright/documents";
import { bullet, wrap } from "../wrap.js";

/** The cut at home and the one at the field, where there are two. */
export function twoCuts(data: DecisionData): string | null {
  const sentence = twoCutsSentence(data);
  return sentence === null ? null : wrap(sentence);
}

/** The cautions of cutting, where any cut is shown. */
export function beforeYouCut(data: DecisionData): string | null {
  return showsCuts(data) ? ["Before you cut", ...cautions.cutting.map(bullet)].join("\n") : null;
}

/** Why the delay is this one; where none is good enough: why, and what would help. */
export function why(data: DecisionData): string | null {
  const { why: first, noneGood, atTop, helps } = whySentences(data);
  const lines = [
    first === null ? null : wrap(first),
    noneGood === null ? null : wrap(noneGood, "", "  "),
    atTop === null ? null : wrap(atTop),
    helps === null ? null : wrap(helps, "", "  "),
  ].filter((line) => line !== null);
  return lines.length === 0 ? null : lines.join("\n");
}
