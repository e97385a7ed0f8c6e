import {
  choiceSentence,
  type DecisionData,
  headlineSentence,
  noDelayWords,
  oddsWords,
  stopSentences,
  suggestedSetting,
  upperFirst,
} from "@delaywright/documents";
import type { Style } from "../style.js";
import { WIDTH, wrap } from "../wrap.js";

/** The first lines: what stops the flight, then what to cut and how good its odds are. */
export function headline(data: DecisionData, style: Style): string {
  const setting = suggestedSetting(data);
  const choice = choiceSentence(data);
  const lines = stopSentences(data).map((sentence) => style.stop(wrap(`STOP: ${sentence}`, "", "      ")));
  if (setting === undefined) lines.push(style.strong(noDelayWords));
  else {
    const [cut, odds] = [headlineSentence(data), upperFirst(`${oddsWords(setting, data.draws)}.`)];
    const fits = cut.length + odds.length + 2 <= WIDTH;
    lines.push(style.strong(fits ? wrap(`${cut}\u00a0 ${odds}`) : `${wrap(cut)}\n${wrap(odds)}`));
  }
  if (choice !== null) lines.push(wrap(choice));
  return lines.join("\n");
}
