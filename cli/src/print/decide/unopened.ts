import { cautions, type DecisionData, unopenedSentences } from "@delaywright/documents";
import { bullet, wrap } from "../wrap.js";

/** Where it comes down if nothing opens, with the cautions of a late charge. */
export function unopenedText(data: DecisionData): string {
  const sentences = unopenedSentences(data).map((sentence) => wrap(sentence, "  "));
  return ["If nothing opens", ...sentences, ...cautions["late-charge"].map(bullet)].join("\n");
}
