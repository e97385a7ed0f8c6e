import type { Answer } from "../answer.js";
import { amount, delayNumber, holdsPercent, percent } from "../numbers.js";
import { wrap } from "../wrap.js";
import { suggested } from "./headline.js";

/** The two questions of a charge that stands behind electronics. */
export function backUp(answer: Answer): string | null {
  const setting = suggested(answer);
  if (setting === undefined || setting.firesFirst === null) return null;
  const { odds, openingSpeed } = setting;
  const speed = openingSpeed === null ? "" : `, half of them above ${amount(openingSpeed.p50, "m/s")}`;
  const others = answer.decision.settings
    .filter((other) => other.delay !== setting.delay && other.firesFirst !== null)
    .slice(0, 6)
    .map((other) => `${delayNumber(other.delay)} s: ${percent(other.firesFirst ?? 0)}`);
  const rest = others.length === 0 ? "" : ` At other settings: ${others.join(", ")}.`;
  return [
    "The motor's charge stands behind the electronics",
    wrap(
      `Odds that it fires before the electronics has opened the rocket: ${percent(setting.firesFirst)}.${rest}`,
      "  ",
    ),
    wrap(
      `If the electronics fails, it opens the rocket alone: ${percent(odds.clean)} clean, holds ${holdsPercent(odds.holds)}${speed}.`,
      "  ",
    ),
  ].join("\n");
}
