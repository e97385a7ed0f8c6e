import type { BallastRange, OverCut, SuitedRocket } from "@delaywright/engine";
import { wordForCheck } from "./checks.en.js";
import { amount, decimals, glued, holdsPercent, percent } from "./numbers.en.js";

/** Ranges narrower than this are one mass [kg]. */
const ONE_MASS = 0.0005;

/** What to do with an element that was cut too deep. */
export interface OverCutSentences {
  readonly now: string;
  /** Ballast, other rockets: a sentence each. */
  readonly ways: readonly string[];
  /** Null where there is a way. */
  readonly doNotFly: string | null;
}

/** What to do with an element that was cut too deep. */
export function overCutSentences(overCut: OverCut): OverCutSentences {
  const { delay, delaySd, clean, holds, ballast, rockets, doNotFly } = overCut;
  return {
    now: `Cut deeper than meant: the delay is now ${amount(delay, "s", 1)} (${glued("±", decimals(delaySd, 1))}, one sigma): ${percent(clean)} clean, holds ${holdsPercent(holds)}.`,
    ways: [...ballast.map(ballastSentence), ...rockets.map(rocketSentence)],
    doNotFly: doNotFly
      ? "Do not fly it: neither a deeper cut, nor ballast, nor another rocket here makes it good enough."
      : null,
  };
}

function ballastSentence({ from, to, at, best, checks }: BallastRange): string {
  const grams = (mass: number): string => amount(1000 * mass, "g");
  const found = checks.filter(({ verdict }) => verdict === "look" || verdict === "stop");
  const checked = found.length === 0 ? "" : ` But ${found.map((c) => `${c.verdict}: ${wordForCheck(c)}`).join("; ")}.`;
  const range = to - from < ONE_MASS ? grams(best.mass) : `${grams(from)} to ${grams(to)}`;
  return `Ballast of ${range} in all, fixed mechanically ${amount(1000 * at, "mm")} from the nose tip: best ${grams(best.mass)}, ${percent(best.clean)} clean, holds ${holdsPercent(best.holds)}.${checked}`;
}

function rocketSentence({ name, clean, holds, stops }: SuitedRocket): string {
  const own = stops ? ", but its own checks say stop" : "";
  return `Another rocket, ${name}: ${percent(clean)} clean, holds ${holdsPercent(holds)}${own}.`;
}
