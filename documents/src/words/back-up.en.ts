import type { DecisionData, SettingData } from "../answer/decision-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { suggestedSetting } from "./headline.en.js";
import { delayNumber, figureWords, holdsPercent, percent } from "./numbers.en.js";

/** Most other settings that are told beside it. */
const MOST_OTHERS = 6;

/** Head of what is said of a charge behind electronics. */
export const backUpHead = "The motor's charge stands behind the electronics";

/** The two questions of a charge that stands behind electronics: does it fire first, and does it open alone. Null for any other. */
export function backUpSentences(
  data: DecisionData,
  units: UnitSystem = "metric",
): { readonly firesFirst: string; readonly alone: string } | null {
  const setting = suggestedSetting(data);
  if (setting === undefined || setting.firesFirst === null) return null;
  const { odds, openingSpeed } = setting;
  const speed =
    openingSpeed.p50 === null ? "" : `, half of them above ${figureWords(openingSpeed.p50, "speed", units, 0)}`;
  const others = data.settings
    .filter((other) => other.delay !== setting.delay && other.firesFirst !== null)
    .slice(0, MOST_OTHERS)
    .map((other) => `${delayNumber(other.delay)} s: ${percent(other.firesFirst ?? 0)}`);
  const rest = others.length === 0 ? "" : ` At other settings: ${others.join(", ")}.`;
  return {
    firesFirst: `Odds that it fires before the electronics has opened the rocket: ${percent(setting.firesFirst)}.${rest}`,
    alone: `If the electronics fails, it opens the rocket alone: ${percent(odds.clean)} clean, holds ${holdsPercent(odds.holds)}${speed}.`,
  };
}

/** The two questions of a charge behind electronics, beside a figure of its odds. */
export interface BackUpNote {
  /** After the odds of a clean opening: of what they are. */
  readonly alone: string;
  /** What that means, and the odds of the other: `if the electronics fails; fires before it in 2 %`. */
  readonly firesFirst: string;
}

/** What stands beside the odds of a setting whose charge is behind electronics; null for any other. */
export function backUpNote({ firesFirst }: Pick<SettingData, "firesFirst">): BackUpNote | null {
  return firesFirst === null
    ? null
    : {
        alone: "clean alone",
        firesFirst: `if the electronics fails; fires before it in ${percent(firesFirst)}`,
      };
}
