import {
  amountParts,
  type DebriefData,
  decimals,
  eventReasonWords,
  eventWords,
  toldEvents,
  type UnitSystem,
} from "@delaywright/documents";
import { table } from "../table.js";

const NONE = "-";

/** Every event as predicted and as flown: times from lift-off. */
export function eventsTable({ events }: DebriefData, units: UnitSystem): string {
  const time = (value: number | null | undefined): string => (value == null ? NONE : decimals(value, 2));
  const height = (value: number | null | undefined): string =>
    value == null ? NONE : amountParts(value, "distance", units).figure;
  const signed = (text: string): string => (Number(text) > 0 ? `+${text}` : text);
  const unit = units === "metric" ? "m" : "ft";
  const rows = toldEvents(events).map(({ name, predicted, flown, difference, differenceError, heightDifference }) => [
    eventWords(name),
    time(predicted?.time),
    time(flown?.time),
    signed(time(difference)),
    time(differenceError),
    height(predicted?.height),
    height(flown?.height),
    signed(height(heightDifference)),
    flown === null ? "" : eventReasonWords(flown.reason),
  ]);
  return table(
    [
      { head: "event", align: "left" },
      { head: "plan\ns" },
      { head: "flown\ns" },
      { head: "later\ns" },
      { head: "sigma\ns" },
      { head: `plan\n${unit}` },
      { head: `flown\n${unit}` },
      { head: `higher\n${unit}` },
      { head: "placed where", align: "left" },
    ],
    rows,
  );
}
