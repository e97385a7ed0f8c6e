import type { BallastRange, OverCut, SuitedRocket } from "@delaywright/engine";
import type { UnitSystem } from "../quantity/systems.js";
import { wordForCheck } from "./checks.en.js";
import { amount, decimals, figureWords, glued, holdsPercent, percent } from "./numbers.en.js";

/** Ranges narrower than this are one mass [kg]. */
const ONE_MASS = 0.0005;

/** One way out of an over-cut. */
export interface OverCutWay {
  /** What to do, and how good it then is: a sentence. */
  readonly does: string;
  /** What checks then find, a sentence that begins with `But`; null where they find nothing. */
  readonly but: string | null;
  /** Odds of a clean opening, 0…1. */
  readonly clean: number;
}

/** What to do with an element that was cut too deep. */
export interface OverCutSentences {
  readonly now: string;
  /** Ballast, then other rockets. */
  readonly ways: readonly OverCutWay[];
  /** Null where there is a way. */
  readonly doNotFly: string | null;
}

/** What to do with an element that was cut too deep. */
export function overCutSentences(overCut: OverCut, units: UnitSystem = "metric"): OverCutSentences {
  const { delay, delaySd, clean, holds, ballast, rockets, doNotFly } = overCut;
  return {
    now: `Cut deeper than meant: the delay is now ${amount(delay, "s", 1)} (${glued("±", decimals(delaySd, 1))}, one sigma): ${percent(clean)} clean, holds ${holdsPercent(holds)}.`,
    ways: [...ballast.map((range) => ballastWay(range, units)), ...rockets.map(rocketWay)],
    doNotFly: doNotFly
      ? "Do not fly it: neither a deeper cut, nor ballast, nor another rocket here makes it good enough."
      : null,
  };
}

function ballastWay({ from, to, untriedBeyond, at, best, checks }: BallastRange, units: UnitSystem): OverCutWay {
  const mass = (value: number): string => figureWords(value, "smallMass", units);
  const found = checks.filter(({ verdict }) => verdict === "look" || verdict === "stop");
  const checked = found.map((check) => `${check.verdict}: ${wordForCheck(check, units)}`).join("; ");
  const range = to - from < ONE_MASS ? mass(best.mass) : `${mass(from)} to ${mass(to)}`;
  const beyond = untriedBeyond ? " (more was not tried)" : "";
  return {
    does: `Ballast of ${range} in all${beyond}, fixed mechanically ${figureWords(at, "length", units)} from the nose tip: best ${mass(best.mass)}, ${percent(best.clean)} clean, holds ${holdsPercent(best.holds)}.`,
    but: checked === "" ? null : `But ${checked}.`,
    clean: best.clean,
  };
}

function rocketWay({ name, clean, holds, stops }: SuitedRocket): OverCutWay {
  const own = stops ? ", but its own checks say stop" : "";
  const does = `Another rocket, ${name}: ${percent(clean)} clean, holds ${holdsPercent(holds)}${own}.`;
  return { does, but: null, clean };
}
