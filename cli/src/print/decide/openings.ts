import { type DecisionData, openingSentences } from "@delaywright/documents";
import { wrap } from "../wrap.js";

/** How nine in ten open, and on what that rests. */
export function openings(data: DecisionData): string | null {
  const sentences = openingSentences(data);
  return sentences.length === 0 ? null : sentences.map((sentence) => wrap(sentence)).join("\n");
}
