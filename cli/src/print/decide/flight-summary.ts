import {
  cautions,
  climbSentence,
  coastSentence,
  type DecisionData,
  descentSentence,
  packingSentences,
  stabilitySentence,
  strengthSentence,
} from "@delaywright/documents";
import { bullet, wrap } from "../wrap.js";

/** The flight as it is expected, and its spread. */
export function flightSummary(data: DecisionData): string {
  return [
    "The flight",
    wrap(climbSentence(data.flight), "  "),
    wrap(coastSentence(data), "  "),
    ...cautions.igniter.map(bullet),
  ].join("\n");
}

/** Static margin where it matters. */
export function stabilityText(data: DecisionData): string {
  return ["Stability", wrap(stabilitySentence(data), "  ")].join("\n");
}

/** The way down, and the cautions of packing. */
export function packing(data: DecisionData): string {
  const descent = descentSentence(data);
  return [
    "Packing and the way down",
    ...(descent === null ? [] : [wrap(descent, "  ")]),
    wrap(strengthSentence(data), "  "),
    ...packingSentences(data).map((sentence) => wrap(sentence, "  ")),
    ...[...cautions.charge, ...cautions.retention].map(bullet),
  ].join("\n");
}
