import { type DecisionData, overCutSentences } from "@delaywright/documents";
import { bullet, wrap } from "../wrap.js";

/** What to do with an element that was cut too deep. */
export function overCutText({ overCut }: DecisionData): string | null {
  if (overCut === null) return null;
  const { now, ways, doNotFly } = overCutSentences(overCut);
  return [
    wrap(now),
    ...ways.map(({ does, but }) => bullet(but === null ? does : `${does} ${but}`)),
    ...(doNotFly === null ? [] : [wrap(doNotFly)]),
  ].join("\n");
}
