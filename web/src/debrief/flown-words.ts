import {
  amountIn,
  type DebriefData,
  debriefHead,
  eventWords,
  toldEvents,
  type UnitSystem,
  upperFirst,
} from "@delaywright/documents";

/** What a plot of a flight shows, for who does not see it. */
export function flownDescription(data: DebriefData, units: UnitSystem): string {
  const places = toldEvents(data.events).map(({ name, flown, predicted }) => {
    const word = upperFirst(eventWords(name));
    const place = ({ time, height }: { readonly time: number; readonly height: number | null }): string =>
      `${time.toFixed(2)} s${height === null ? "" : `, ${amountIn(height, "distance", units)}`}`;
    if (flown === null) return `${word} not found${predicted === null ? "" : `, predicted at ${place(predicted)}`}.`;
    return `${word} at ${place(flown)}${predicted === null ? "" : `, predicted at ${place(predicted)}`}.`;
  });
  return [debriefHead(data, units), ...places].join(" ");
}
