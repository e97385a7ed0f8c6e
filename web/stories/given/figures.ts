import {
  amountParts,
  type DecisionData,
  delayColumn,
  headline,
  holdsCell,
  holdsPercent,
  openingWords,
  percent,
  percentCell,
  suggestedSetting,
} from "@delaywright/documents";
import type { SettingRow } from "../pages/plan.js";
import { plain } from "../pages/sheet.js";

/** What an answer says in large letters, from the command line's figures and the words that both faces share. */
export function answerFigures(data: DecisionData) {
  const said = headline(data);
  const setting = suggestedSetting(data);
  if (said === null || setting === undefined) throw new Error("the motor has no delay to speak of");
  const [, below, above, when] =
    /open below (\S+ m\/s) and above (\S+ m) AGL, (.*)$/.exec(plain(openingWords(setting, data.draws))) ?? [];
  return {
    lead: plain(said.lead),
    detail: plain(said.detail),
    clean: plain(percent(setting.odds.clean)),
    holds: plain(holdsPercent(setting.odds.holds)),
    below: `${below}`,
    above: `${above}`,
    when: `${when}`,
  };
}

/** The rows of the table of settings, longest delay first, as the command line's figures give them. */
export function settingFigures({ settings }: DecisionData): readonly Omit<SettingRow, "cut">[] {
  const rows = [...settings].sort((a, b) => b.delay - a.delay);
  const delays = delayColumn(rows.map(({ delay }) => delay));
  const figure = (value: number | null, measure: "speed" | "distance"): string =>
    value === null ? "–" : amountParts(value, measure, "metric").figure;
  return rows.map(({ odds, openingSpeed, openingHeight }, i) => ({
    delay: `${delays[i]} s`,
    clean: percentCell(odds.clean),
    holds: holdsCell(odds.holds),
    half: figure(openingSpeed.p50, "speed"),
    below: figure(openingSpeed.p90, "speed"),
    above: figure(openingHeight.p10, "distance"),
  }));
}
