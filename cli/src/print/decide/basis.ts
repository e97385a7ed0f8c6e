import { basisLines, type DecisionData } from "@delaywright/documents";
import { wrap } from "../wrap.js";

/** For whom and with what it was reckoned, so that it can be repeated. */
export function basis(data: DecisionData): string {
  return basisLines(data)
    .map((line) => wrap(line))
    .join("\n");
}
