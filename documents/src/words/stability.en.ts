import type { StabilityData, StabilityMoment, StabilityWhich } from "../answer/stability-data.js";
import { amountParts, type UnitSystem } from "../quantity/systems.js";
import { amount, decimals, figureWords, glued } from "./numbers.en.js";
import { own } from "./own.js";

type Finding = StabilityData["findings"][number];

/** Angles of a swing, to a tenth of a degree. */
export function angleWords(radians: number): string {
  return amount((radians * 180) / Math.PI, "deg", 1);
}

/** `2.2 calibres`. */
export function calibresWords(calibres: number): string {
  return glued(decimals(calibres, 1), "calibres");
}

const findings: Readonly<Record<Finding["code"], (finding: Finding) => string>> = Object.freeze({
  unstable: ({ value, time, from, to }) =>
    `Unstable: its centre of pressure lies ahead of its balance point between ${decimals(from, 1)} and ${secondsAfter(to)}, at worst by ${calibresWords(Math.abs(value))}, after ${amount(time, "s", 1)}. Nothing turns it back into the wind there: it may tumble, and what is reckoned of its flight does not hold.`,
  "low-margin": ({ value, limit, time, from, to }) =>
    `Its margin falls to ${glued(decimals(value, 2), "calibres")} ${secondsAfter(time)}, and is below ${decimals(limit, 1)}, the least that is asked for, between ${decimals(from, 1)} and ${amount(to, "s", 1)}. Ballast in the nose or larger fins raise it.`,
  "over-stable": ({ value, limit, time }) =>
    `Over-stable: its margin reaches ${calibresWords(value)} ${secondsAfter(time)}, above ${decimals(limit, 1)} (common practice, no source). It turns farther into the wind than it need: a lower top, a longer walk.`,
  "under-damped": ({ value, limit, time }) =>
    `Under-damped: its damping ratio falls to ${decimals(value, 3)} ${secondsAfter(time)}, below ${decimals(limit, 2)} (from memory). A swing goes on for many swings, and a gust at its own frequency would feed it.`,
});

const secondsAfter = (time: number): string => `${amount(time, "s", 1)} after ignition`;

/** Least margin, most margin and least damping that nothing passed. */
function withinWords({ leastMargin, mostMargin, leastDamping }: StabilityData["limits"]): string {
  const margin =
    leastMargin === null
      ? `stays within ${calibresWords(mostMargin)}`
      : `stays between ${decimals(leastMargin, 1)} and ${calibresWords(mostMargin)}`;
  return `its margin ${margin} (common practice, no source) and its damping ratio at ${decimals(leastDamping, 2)} or more (from memory)`;
}

/** What passes the usual limits, each in a sentence; where nothing does, that. A code that is not known speaks for itself. */
export function stabilityVerdictSentences({ findings: found, limits, moments }: StabilityData): readonly string[] {
  if (moments.length === 0) return ["It never left the guide: there is no swing to judge."];
  if (found.length === 0)
    return [
      `Neither unstable, over-stable nor under-damped as reckoned: ${withinWords(limits)}. The figures are a model's, of the rocket as it was measured.`,
    ];
  return found.map((finding) => own(findings, finding.code)?.(finding) ?? `${finding.code.replaceAll("-", " ")}.`);
}

/** The angle of the airflow as it leaves the guide, in the day's wind. */
export function guideExitAngleSentence({ guideExitAngle }: StabilityData, units: UnitSystem = "metric"): string | null {
  if (guideExitAngle === null) return null;
  const { mean, highest, gust } = guideExitAngle;
  const most =
    gust > 0
      ? `, at most ${angleWords(highest)} with a gust of ${figureWords(gust, "wind", units)} across (twice the turbulence's intensity in the day's wind)`
      : "";
  return `Leaving the guide, the air meets it at ${angleWords(mean)}${most}.`;
}

/** Heads of the columns of `stabilityCells`, with the unit in the second line. */
export function stabilityHeads(units: UnitSystem = "metric"): readonly string[] {
  const mass = amountParts(0, "mass", units).unit;
  return [
    "at",
    "time\ns",
    "Mach",
    `mass\n${mass}`,
    "margin\ncalibres",
    "swings\nper s",
    "damping\nratio",
    "angle\ndeg",
  ];
}

const names: Readonly<Record<StabilityWhich, string>> = Object.freeze({
  "guide-exit": "guide exit",
  fastest: "fastest",
  burnout: "burnout",
  top: "top",
});

/** One moment for a table: what it is, then its figures in the order of `stabilityHeads`. */
export function stabilityCells(moment: StabilityMoment, units: UnitSystem = "metric"): readonly string[] {
  const { which, time, mach, mass, margin, frequency, dampingRatio, angleOfAttack } = moment;
  const stable = frequency > 0;
  return [
    own(names, which) ?? which,
    decimals(time, 2),
    decimals(mach, 2),
    amountParts(mass, "mass", units).figure,
    decimals(margin, 2),
    stable ? decimals(frequency / (2 * Math.PI), 2) : "–",
    stable ? decimals(dampingRatio, 3) : "–",
    angleOfAttack === null ? "–" : decimals((angleOfAttack * 180) / Math.PI, 1),
  ];
}

/** What the columns of the swing mean. */
export const stabilityColumnsNote =
  "Margin at no angle of attack, from the reference diameter. Swings and damping ratio are those of a small swing at that speed, without the bending of the path, which damps it further.";
