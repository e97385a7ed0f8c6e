import { wordForCheck } from "@delaywright/documents";
import type { BallastRange, SuitedRocket } from "@delaywright/engine";
import type { Answer } from "../answer.js";
import { amount, decimals, glued, holdsPercent, percent } from "../numbers.js";
import { bullet, wrap } from "../wrap.js";

function ballastWords({ from, to, at, best, checks }: BallastRange): string {
  const grams = (mass: number): string => amount(1000 * mass, "g");
  const found = checks.filter((check) => check.verdict !== "pass");
  const checked = found.length === 0 ? "" : ` But ${found.map((c) => `${c.verdict}: ${wordForCheck(c)}`).join("; ")}.`;
  const range = to - from < 0.0005 ? grams(best.mass) : `${grams(from)} to ${grams(to)}`;
  return `Ballast of ${range} in all, fixed mechanically ${amount(1000 * at, "mm")} from the nose tip: best ${grams(best.mass)}, ${percent(best.clean)} clean, holds ${holdsPercent(best.holds)}.${checked}`;
}

function rocketWords({ name, clean, holds, stops }: SuitedRocket): string {
  const own = stops ? ", but its own checks say stop" : "";
  return `Another rocket, ${name}: ${percent(clean)} clean, holds ${holdsPercent(holds)}${own}.`;
}

/** What to do with an element that was cut too deep. */
export function overCutText({ decision }: Answer): string | null {
  const { overCut } = decision;
  if (overCut === null) return null;
  const now = `Cut deeper than meant: the delay is now ${amount(overCut.delay, "s", 1)} (${glued("±", decimals(overCut.delaySd, 1))}, one sigma): ${percent(overCut.clean)} clean, holds ${holdsPercent(overCut.holds)}.`;
  const ways = [...overCut.ballast.map(ballastWords), ...overCut.rockets.map(rocketWords)];
  const lines = [wrap(now), ...ways.map(bullet)];
  if (overCut.doNotFly)
    lines.push(wrap("Do not fly it: neither a deeper cut, nor ballast, nor another rocket here makes it good enough."));
  return lines.join("\n");
}
