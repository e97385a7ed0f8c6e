import type { KnowledgeData, LearnedData, UntaughtCode } from "../answer/debrief-data.js";
import type { FactorData } from "../answer/factor-data.js";
import { amount, decimals, delayWords, glued, upperFirst } from "./numbers.en.js";

/** Closer than this to what is reckoned with it is called as reckoned. */
const AS_RECKONED = 0.005;

/** An uncertainty that shrank by less than this share taught next to nothing. */
const NEXT_TO_NOTHING = 0.03;

/** One sigma of a factor in percent: `15 %`. */
export function sigmaWords({ sd }: Pick<FactorData, "sd">): string {
  const percent = 100 * sd;
  return glued(decimals(percent, percent < 9.95 ? 1 : 0).replace(/\.0$/, ""), "%");
}

/** A factor as a difference: `7 % more`, `1.5 % less`, `as reckoned`. */
export function factorWords({ factor }: Pick<FactorData, "factor">, as = "as reckoned"): string {
  const percent = 100 * Math.abs(factor - 1);
  if (percent < 100 * AS_RECKONED) return as;
  return `${glued(decimals(percent, percent < 9.95 ? 1 : 0).replace(/\.0$/, ""), "%")} ${factor > 1 ? "more" : "less"}`;
}

/** A factor with its sigma, for a table: `1.07 ± 0.06`. */
export function factorCell({ factor, sd }: FactorData): string {
  return `${decimals(factor, 3)} ± ${decimals(factor * sd, 3)}`;
}

function learnedOf(what: string, than: string, before: FactorData, after: FactorData): string {
  const amountOf = factorWords(after, `as ${than}`);
  const said = `${what}: ${amountOf.startsWith("as ") ? amountOf : `${amountOf} than ${than}`}, ± ${sigmaWords(after)}`;
  if (before.sd - after.sd < NEXT_TO_NOTHING * before.sd)
    return `${said}; this flight taught next to nothing of it, it was ± ${sigmaWords(before)} before.`;
  return `${said}; before this flight it was ${factorWords(before, `as ${than}`)}, ± ${sigmaWords(before)}.`;
}

/** What is now reckoned of the rocket's drag, and what was before. */
export function dragSentence({ before, after }: Pick<LearnedData, "before" | "after">): string {
  return learnedOf("Drag", "reckoned", before.drag, after.drag);
}

/** What is now reckoned of the motor type's impulse, and what was before. */
export function impulseSentence({ before, after }: Pick<LearnedData, "before" | "after">): string {
  return learnedOf("Impulse", "stated", before.impulse, after.impulse);
}

/** A delay and the range in which nine in ten burn: `9.4 s, 9 in 10 from 8.3 to 10.5 s`. */
export function delayRangeWords({ mean, low, high }: NonNullable<KnowledgeData["delay"]>): string {
  return `${amount(mean, "s", 1)}, ${glued("9", "in", "10")} from ${decimals(low, 1)} to ${amount(high, "s", 1)}`;
}

/** What is now reckoned of the motor type's delay at the setting that flew; null for a motor without delay. */
export function delayLearnedSentence({ before, after }: Pick<LearnedData, "before" | "after">): string | null {
  if (before.delay === null || after.delay === null) return null;
  const { set } = after.delay;
  return `Delay: an element of this type set to ${delayWords(set)} now is reckoned to burn ${delayRangeWords(after.delay)}; before this flight ${delayRangeWords(before.delay)}.`;
}

/** On how many flights it rests, and how little that is. */
export function learnedBasis({ flights }: Pick<KnowledgeData, "flights">): string {
  const { rocket, motor, both } = flights;
  if (rocket + motor === 0)
    return "No flight of this rocket or this motor type is known: the plan's own spread stands.";
  const count = (n: number) => `${n} ${n === 1 ? "flight" : "flights"}`;
  const little = Math.max(rocket, motor) === 1 ? " One flight proves little: it moves the figures, and no more." : "";
  const together = both === 0 ? "none of them of both together" : `${both} of them of both together`;
  return `Drag and impulse rest on ${count(rocket)} of this rocket and ${count(motor)} of this motor type, ${together}.${little}`;
}

const untaught: Readonly<Record<UntaughtCode, string>> = Object.freeze({
  excluded: "nothing is learned from it, since you left it out",
  "no-findings": "nothing is learned from it, since nothing was found out yet",
  "no-climb": "nothing is learned of drag and impulse, since its climb could not be fitted",
  "no-delay": "nothing is learned of the delay, since no delay could be read off it",
  "delay-bound": "of the delay only a bound is learned, since the charge was not seen to fire",
  "set-not-known": "nothing is learned of the delay, since nobody said what it was set to",
  "not-read": "nothing is learned from it, since its rocket and its motor could not be read",
  "other-drag": "nothing is learned of drag and impulse, since the rocket's drag was reckoned in another way then",
  "other-rocket-and-motor": "nothing is learned from it here, since rocket and motor type both are others",
});

/** Why a flight teaches nothing, or not all, as a clause. */
export function untaughtWords(code: UntaughtCode): string {
  return untaught[code];
}

/** Why this flight taught nothing, or not all: a sentence each. */
export function untaughtSentences({ untaught: codes }: Pick<LearnedData, "untaught">): string[] {
  return codes.map(
    (code) => `${upperFirst(untaughtWords(code))}${code === "set-not-known" ? ": say it with the debrief" : ""}.`,
  );
}
