import {
  amountIn,
  amountParts,
  type DebriefData,
  type DebriefEvent,
  eventReasonWords,
  eventWords,
  meaningSentence,
  toldEvents,
  type UnitSystem,
  upperFirst,
} from "@delaywright/documents";
import type { EventName } from "@delaywright/engine";
import { Button } from "react-aria-components";
import { secondsWords } from "../pictures/figures.js";

export interface EventTableProps {
  readonly data: DebriefData;
  readonly units: UnitSystem;
  /** Null: nothing can be moved. */
  readonly onChoose: ((name: EventName) => void) | null;
}

const seconds = (value: number): string => secondsWords(value, 2);
function signed(value: number, decimals: number): string {
  const figure = Math.abs(value).toFixed(decimals);
  if (Number(figure) === 0) return figure;
  return `${value < 0 ? "−" : "+"}${figure}`;
}

/** Each event as predicted and as flown, what lies between, and why it was placed there. */
export function EventTable({ data, units, onChoose }: EventTableProps) {
  const events = toldEvents(data.events);
  return (
    <>
      <table className="debrief-events">
        <caption className="hidden">Events, seconds after lift-off and height above the pad</caption>
        <thead>
          <tr>
            <th scope="col">Event</th>
            <th scope="col" className="n">
              predicted
            </th>
            <th scope="col" className="n">
              flown
            </th>
            <th scope="col" className="n">
              difference
            </th>
            <th scope="col">placed there by</th>
          </tr>
        </thead>
        <tbody>
          {events.map((event) => (
            <EventRow key={event.name} event={event} units={units} onChoose={onChoose} />
          ))}
        </tbody>
      </table>
      <ul className="sheet-lines debrief-meanings">
        {events.map((event) => (
          <li key={event.name}>{meaningSentence(event, units)}</li>
        ))}
      </ul>
    </>
  );
}

function EventRow({ event, units, onChoose }: Omit<EventTableProps, "data"> & { readonly event: DebriefEvent }) {
  const { name, predicted, flown, difference, differenceError, heightDifference } = event;
  const height = (value: number): string => amountIn(value, "distance", units).replace("-", "−");
  const word = upperFirst(eventWords(name));
  return (
    <tr>
      <th scope="row">
        {flown === null || onChoose === null ? (
          word
        ) : (
          <Button className="debrief-move" onPress={() => onChoose(name)} aria-label={`${word}: move it on the plot`}>
            {word}
          </Button>
        )}
      </th>
      <td className="n" data-label="predicted">
        {predicted === null ? "–" : seconds(predicted.time)}
        {predicted !== null && <small>{height(predicted.height)}</small>}
      </td>
      <td className="n" data-label="flown">
        {flown === null ? "–" : seconds(flown.time)}
        {flown !== null && flown.timeError !== null && <small>± {seconds(flown.timeError)}</small>}
        {flown !== null && flown.height !== null && <small>{height(flown.height)}</small>}
      </td>
      <td className="n" data-label="difference">
        {difference === null ? "–" : `${signed(difference, 2)}\u202fs`}
        {difference !== null && differenceError !== null && <small>± {seconds(differenceError)}</small>}
        {difference !== null && heightDifference !== null && <small>{heightWords(heightDifference, units)}</small>}
      </td>
      <td data-label="placed there by">
        {flown === null ? "not found" : eventReasonWords(flown.reason)}
        {flown !== null && flown.movedFrom !== null && <small>{`found at ${seconds(flown.movedFrom)}`}</small>}
      </td>
    </tr>
  );
}

function heightWords(metres: number, units: UnitSystem): string {
  const { figure, unit } = amountParts(metres, "distance", units);
  return `${signed(Number(figure), 0)} ${unit}`;
}
