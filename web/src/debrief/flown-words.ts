import {
  amountIn,
  type DebriefData,
  debriefHead,
  eventWords,
  toldEvents,
  type UnitSystem,
  upperFirst,
} from "@delaywright/documents";
import { secondsWords } from "../pictures/figures.js";

/** Between which heights the predicted flights top: the band of the plot. */
function bandWords({ apogee }: DebriefData["predicted"], units: UnitSystem): string[] {
  const [low, high] = [apogee.p05, apogee.p95].map((height) => amountIn(height, "distance", units));
  const spread = Number.isFinite(apogee.p05) && Number.isFinite(apogee.p95) && apogee.p95 > apogee.p05;
  return spread ? [`9 in 10 predicted flights have their top between ${low} and ${high}.`] : [];
}

/** What a plot of a flight shows, for who does not see it. */
export function flownDescription(data: DebriefData, units: UnitSystem): string {
  const places = toldEvents(data.events).map(({ name, flown, predicted }) => {
    const word = upperFirst(eventWords(name));
    const place = ({ time, height }: { readonly time: number; readonly height: number | null }): string =>
      `${secondsWords(time, 2)}${height === null ? "" : `, ${amountIn(height, "distance", units)}`}`;
    if (flown === null) return `${word} not found${predicted === null ? "" : `, predicted at ${place(predicted)}`}.`;
    return `${word} at ${place(flown)}${predicted === null ? "" : `, predicted at ${place(predicted)}`}.`;
  });
  return [debriefHead(data, units), ...bandWords(data.predicted, units), ...places].join(" ");
}
