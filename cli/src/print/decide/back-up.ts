import { backUpHead, backUpSentences, type DecisionData } from "@delaywright/documents";
import { wrap } from "../wrap.js";

/** The two questions of a charge that stands behind electronics. */
export function backUp(data: DecisionData): string | null {
  const sentences = backUpSentences(data);
  if (sentences === null) return null;
  return [backUpHead, wrap(sentences.firesFirst, "  "), wrap(sentences.alone, "  ")].join("\n");
}
