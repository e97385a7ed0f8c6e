import type { DecisionData, LearnedBasis, SettingData } from "../answer/decision-data.js";
import { defaultSpread } from "../defaults.js";
import { FOOT, type UnitSystem } from "../quantity/systems.js";
import { flownSetting, flownWords } from "./headline.en.js";
import { factorWords, sigmaWords } from "./learned.en.js";
import { amount, figureWords, glued, upperFirst } from "./numbers.en.js";
import { wordForWarning } from "./warnings.en.js";

/** The warning that says on what the odds rest; it is told beside the odds. */
export const basisWarning = "drag-not-learned";

/** Narrower than this it is one moment [s]. */
const ONE_MOMENT = 0.05;

/** So close to a whole number it is that number. */
const WHOLE = 1e-9;

/** `1.2 s before to 1.9 s after the top`. */
export function timingWords(p05: number, p95: number): string {
  const seconds = (value: number): string => amount(Math.abs(value), "s", 1);
  if (p95 - p05 < ONE_MOMENT) return `${seconds(p05)} ${p05 < 0 ? "before" : "after"} the top`;
  if (p05 < 0 && p95 > 0) return `${seconds(p05)} before to ${seconds(p95)} after the top`;
  return p95 <= 0
    ? `${seconds(p05)} to ${seconds(p95)} before the top`
    : `${seconds(p05)} to ${seconds(p95)} after the top`;
}

/** A speed that others stay below, rounded up so that it stays true. */
export function belowWords(speed: number, units: UnitSystem = "metric"): string {
  const step = units === "metric" ? 1 : FOOT;
  return figureWords(Math.ceil(speed / step - WHOLE) * step, "speed", units, 0);
}

/** A height that others stay above, rounded down so that it stays true. */
export function aboveWords(height: number, units: UnitSystem = "metric"): string {
  const step = units === "metric" ? 1 : FOOT;
  return figureWords(Math.floor(height / step + WHOLE) * step, "distance", units);
}

/** How a setting opens: `9 in 10 open below 19 m/s and above 565 m AGL, 1.5 s before to 1.7 s after the top`. */
export function openingWords(setting: SettingData, draws: number, units: UnitSystem = "metric"): string {
  const { openingSpeed: speed, openingHeight: height, secondsFromApogee: timing } = setting;
  if (
    speed.p50 === null ||
    speed.p90 === null ||
    height.p50 === null ||
    height.p10 === null ||
    timing.p05 === null ||
    timing.p95 === null
  )
    return "every flight lands before it opens";
  const when = timingWords(timing.p05, timing.p95);
  if (draws === 1)
    return `it opens at ${figureWords(speed.p50, "speed", units, 0)} and ${figureWords(height.p50, "distance", units)} AGL, ${when}`;
  return `${glued("9", "in", "10")} open below ${belowWords(speed.p90, units)} and above ${aboveWords(height.p10, units)} AGL, ${when}`;
}

/** On what the odds of a setting rest, as a clause. */
export function restsWords(
  { draws, given, warnings, learned }: Pick<DecisionData, "draws" | "given" | "warnings" | "learned">,
  { delaySd }: SettingData,
): string {
  if (draws === 1) return "one flight, which makes no odds";
  const { seconds, fraction } = given.delayScatter;
  const standard = seconds === defaultSpread.delay.seconds && fraction === defaultSpread.delay.fraction;
  const scatter = `${amount(delaySd, "s", 1)} one sigma`;
  const taught = learned?.delays ?? null;
  if (learned !== null && taught !== null)
    return [`${delaysSeenWords(taught)}, ${scatter}`, dragLearnedWords(learned)].join("; ");
  const delay = standard
    ? `the standard's tolerance for the delay, ${scatter}, no delay of this motor type logged yet`
    : `the plan's own figure for the delay's scatter, ${scatter}`;
  const drag = warnings
    .filter((warning) => warning.code === basisWarning)
    .map((warning) => wordForWarning({ ...warning, value: null }));
  return [delay, ...(learned === null ? drag : [dragLearnedWords(learned)])].join("; ");
}

/** `3 delays of this motor type seen`, `2 delays of this motor type seen and 1 bound`. */
function delaysSeenWords({ seen, bounds }: { readonly seen: number; readonly bounds: number }): string {
  const ofType = `${seen} ${seen === 1 ? "delay" : "delays"} of this motor type seen`;
  return bounds === 0 ? ofType : `${ofType} and ${bounds} ${bounds === 1 ? "bound" : "bounds"}`;
}

/** `drag 8 % more than reckoned, ± 3.6 %, from 3 flights of this rocket`. */
function dragLearnedWords({ drag, flights }: LearnedBasis): string {
  const said = factorWords(drag);
  const amountOf = said === "as reckoned" ? said : `${said} than reckoned`;
  if (flights.rocket === 0) return "drag not learned: no flight of this rocket logged yet";
  return `drag ${amountOf}, ± ${sigmaWords(drag)}, from ${flights.rocket} ${flights.rocket === 1 ? "flight" : "flights"} of this rocket`;
}

/** What all odds leave out. */
export const oddsProviso =
  "All odds hold if the charge fires and the rocket separates; zippered tubes and snatch are not in them.";

/** How the setting that is to be flown opens, on what that rests, and what it leaves out: three sentences; none for a motor without delay. */
export function openingSentences(data: DecisionData, units: UnitSystem = "metric"): string[] {
  const setting = flownSetting(data);
  if (setting === undefined) return [];
  const at = data.choice === null ? "" : `At ${flownWords(data)}: `;
  const how = `${at}${setting.firesFirst === null ? "" : "If the electronics fails: "}${openingWords(setting, data.draws, units)}.`;
  return [upperFirst(how), `On what that rests: ${restsWords(data, setting)}.`, oddsProviso];
}
