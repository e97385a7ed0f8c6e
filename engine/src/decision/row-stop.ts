import { DrawnValues } from "../flight/fast/draw.js";
import type { RuleFacts } from "../rules/facts.js";
import { inputsOfDraw } from "../spread/drawn-inputs.js";
import { APOGEE_HEIGHT } from "../spread/ensemble-chunk.js";
import type { WeatherShift } from "../spread/fly-draw.js";
import type { Setting } from "./decision.js";
import { flownColumn } from "./flight-figures.js";
import type { DecisionInputs } from "./inputs.js";
import { landedOf } from "./landed.js";
import type { JudgedSettings } from "./odds.js";
import { type OpenedOptions, openedPlaces } from "./opened-places.js";
import { quantilesOf } from "./quantiles.js";
import { flightFacts, placeFacts } from "./rule-facts.js";
import { stabilityOf } from "./stability.js";
import { unopenedPlaces } from "./unopened.js";
import { type FirstStop, stopBetween, weatherStop } from "./weather-stop.js";

/** One wind of a row, and what its draws say of one setting. */
export interface WindJudged {
  readonly wind: number;
  readonly shift: WeatherShift;
  readonly judged: JudgedSettings;
}

/** Opened flights are followed down in every so many winds only: they are dear, and drift farther as the wind grows. */
const stride = 2;

/** Of which so many tell the wind at an edge to a few tenths of a metre a second. */
const openedDraws = 64;

/**
 * The lowest wind of a row in which a rule says stop, by the facts that `decide` would judge there.
 *
 * They are of the draws that gave the odds; where opened flights land is followed down only as far as no other rule stops
 * before. The speed at the end of the guide is that of the row's nominal flight.
 *
 * @param inputs at the lean of the row
 * @param row rising winds, at least one, each judged at the one setting
 * @returns null where none does; at the first wind where one does at once
 * @throws what the pause rejects with
 */
export async function rowStop(
  inputs: DecisionInputs,
  row: readonly WindJudged[],
  options: OpenedOptions,
): Promise<FirstStop | null> {
  const { ruleSet } = inputs;
  const { rough } = row[0]!.judged;
  const nominal = flightFacts(inputs, rough, stabilityOf(rough), rough.events.apogee?.position[2] ?? 0);
  const flown: RuleFacts[] = [];
  for (const each of row) {
    flown.push({ ...nominal, ...drawnFacts(inputs, each) });
    if (weatherStop(flown.at(-1)!, ruleSet) !== null) break;
  }
  const last = flown.length - 1;
  const known = new Map<number, RuleFacts>();
  const factsAt = async (i: number): Promise<RuleFacts> => {
    const facts = known.get(i) ?? { ...flown[i]!, ...(await openedFacts(inputs, row[i]!, options)) };
    known.set(i, facts);
    return facts;
  };
  const stopAt = async (i: number) => weatherStop(await factsAt(i), ruleSet);
  let first = 0;
  while ((await stopAt(first)) === null) {
    if (first === last) return null;
    first = Math.min(first + stride, last);
  }
  while (first > 0 && !known.has(first - 1) && (await stopAt(first - 1)) !== null) first -= 1;
  if (first === 0) return { wind: row[0]!.wind, check: (await stopAt(0))! };
  const place = async (i: number) => ({ wind: row[i]!.wind, facts: await factsAt(i) });
  return stopBetween(await place(first - 1), await place(first), ruleSet);
}

/** What the draws say in a wind. */
function drawnFacts(inputs: DecisionInputs, { wind, judged }: WindJudged): RuleFacts {
  const { chunk, settings, notFlown } = judged;
  const heights = flownColumn(chunk, APOGEE_HEIGHT);
  const unopened = landedOf(unopenedPlaces(chunk), inputs.fieldLimits);
  return {
    windSpeed: wind,
    drawsNotFlown: notFlown,
    ...(heights.length > 0 ? { height95: quantilesOf(heights, [0.95])[0]! } : {}),
    openingSpeed90: settings[0]!.openingSpeed?.p90 ?? null,
    openingSpeedLimit: inputs.limits.openingSpeed,
    ...placeFacts(inputs, { opened: null, unopened }, opens(settings[0]!)),
  };
}

function opens({ odds }: Setting): boolean {
  return odds.grounded < 1;
}

/** Where it lands opened, where the field says where it may. */
async function openedFacts(
  inputs: DecisionInputs,
  { shift, judged }: WindJudged,
  options: OpenedOptions,
): Promise<RuleFacts> {
  const { boundary, keepOff = [] } = inputs.fieldLimits;
  const setting = judged.settings[0]!;
  if ((boundary === undefined && keepOff.length === 0) || !opens(setting)) return {};
  const { wind } = inputsOfDraw(inputs, Object.assign(new DrawnValues(), shift));
  const places = await openedPlaces({ ...inputs, wind }, setting, judged, options, openedDraws);
  const opened = landedOf(places, inputs.fieldLimits);
  const { keepOffUnopened: _, outsideUnopened: __, ...facts } = placeFacts(inputs, { opened, unopened: opened }, true);
  return facts;
}
