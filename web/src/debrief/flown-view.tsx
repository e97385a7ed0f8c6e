import { amountIn, type DebriefData, eventWords, type UnitSystem, upperFirst } from "@delaywright/documents";
import type { EventName } from "@delaywright/engine";
import { useEffect, useMemo, useRef, useState } from "react";
import { Button, Input, Label, TextField } from "react-aria-components";
import type { DebriefTold, FlownLines, Stretch } from "../compute/debrief/protocol.js";
import { PickField } from "../parts/index.js";
import { readNumber } from "../parts/number-field.js";
import { FlownHandle } from "../pictures/flown-handle.js";
import { FlownPlot } from "../pictures/flown-plot.js";
import { clampedWindow, movedWindow, zoomedWindow } from "../pictures/flown-view.js";
import { flownDescription } from "./flown-words.js";
import { useStretch } from "./use-stretch.js";

export interface FlownViewProps {
  readonly told: DebriefTold;
  readonly plot: NonNullable<DebriefTold["plot"]>;
  readonly units: UnitSystem;
  /** An event in hand, to be moved; null: none. */
  readonly chosen: EventName | null;
  readonly onChoose: (name: EventName | null) => void;
  /** Moves an event, seconds after lift-off; null: back to where it was found. */
  readonly onMove: (name: EventName, time: number | null) => void;
}

const nothing = Object.freeze({ predicted: { time: [], height: [] }, residual: { time: [], height: [] } });

/** Shown around an event that is to be moved [s]. */
const AROUND = 3;

/** Steps by which keys move an event, in a window of a second [s]. */
const STEP = 0.005;

/** The plot of a flight with its prediction: zoomed by buttons, its events moved by hand or by keys. */
export function FlownView({ told, plot, units, chosen, onChoose, onMove }: FlownViewProps) {
  const { data } = told;
  const { whole, ranges } = plot;
  const [asked, show] = useState<Stretch | null>(null);
  const window = useMemo(() => (asked === null ? whole : clampedWindow(asked, whole)), [asked, whole]);
  const lines = useStretch(plot, window);
  const [draft, setDraft] = useState<number | null>(null);
  const event = data.events.find(({ name }) => name === chosen);
  const found = event?.flown ?? null;
  const range = chosen === null ? undefined : ranges[chosen];
  const time = draft ?? found?.time ?? null;
  const handle = useRef<HTMLDivElement>(null);
  const at = found?.time ?? null;
  // an event that was just taken in hand comes into view, and its handle under the hand
  const held = useRef<EventName | null>(null);
  useEffect(() => {
    if (held.current === chosen) return;
    held.current = chosen;
    setDraft(null);
    if (at === null) return;
    show({ from: at - AROUND, to: at + AROUND });
    requestAnimationFrame(() => handle.current?.focus());
  }, [chosen, at]);
  const done = (to: number | null): void => {
    if (chosen !== null && to !== null && to !== found?.time) onMove(chosen, to);
  };
  const marks = data.events.map(({ name, flown, predicted }) => ({
    name,
    word: eventWords(name),
    time: name === chosen ? time : (flown?.time ?? null),
    predicted: predicted?.time ?? null,
  }));
  const drawn = useMemo(() => drawnOf(told.data, plot, lines), [told.data, plot, lines]);
  const zoom = (by: number): void => show(zoomedWindow(window, by, whole, time ?? undefined));
  const movable = data.events.filter(({ name, flown }) => flown !== null && ranges[name] !== undefined);
  return (
    <div className="flown">
      <div className="flown-tools" role="toolbar" aria-label="What of the flight is shown">
        <Button className="act" onPress={() => zoom(0.5)} isDisabled={window.to - window.from < 0.6}>
          Closer
        </Button>
        <Button className="act" onPress={() => zoom(2)} isDisabled={asked === null}>
          Farther
        </Button>
        <Button
          className="act"
          onPress={() => show(movedWindow(window, -0.5, whole))}
          isDisabled={window.from <= whole.from}
        >
          Earlier
        </Button>
        <Button
          className="act"
          onPress={() => show(movedWindow(window, 0.5, whole))}
          isDisabled={window.to >= whole.to}
        >
          Later
        </Button>
        <Button className="act" onPress={() => show(null)} isDisabled={asked === null}>
          Whole flight
        </Button>
        <Button className="act" onPress={() => show(climbOf(data, whole))}>
          Climb
        </Button>
      </div>
      <div className="flown-frame">
        <FlownPlot
          window={window}
          {...drawn}
          marks={marks}
          chosen={chosen}
          units={units}
          description={flownDescription(data, units)}
        />
        {chosen !== null && range !== undefined && time !== null && (
          <FlownHandle
            handle={handle}
            label={`Move: ${eventWords(chosen)}`}
            window={window}
            time={time}
            range={range}
            words={`${time.toFixed(2)} s${found?.height == null ? "" : `, found at ${amountIn(found.height, "distance", units)}`}`}
            step={Math.max(0.001, STEP * (window.to - window.from))}
            onMove={setDraft}
            onDone={() => {
              done(draft);
              setDraft(null);
            }}
          />
        )}
      </div>
      <div className="flown-move">
        <PickField
          frame="debrief-choice"
          label="Move an event"
          items={[
            { id: "", word: "none" },
            ...movable.map(({ name }) => ({ id: name, word: upperFirst(eventWords(name)) })),
          ]}
          chosen={chosen ?? ""}
          onChoose={(id) => onChoose(id === "" ? null : (id as EventName))}
        />
        {chosen !== null && range !== undefined && found !== null && (
          <>
            <MoveField key={`${chosen} ${found.time}`} time={found.time} range={range} onTime={done} />
            {found.movedFrom !== null && (
              <Button className="act" onPress={() => onMove(chosen, null)}>
                Back to where it was found
              </Button>
            )}
          </>
        )}
      </div>
    </div>
  );
}

/** From just before lift-off to just after the top and the opening. */
function climbOf({ events }: DebriefData, whole: Stretch): Stretch {
  const times = events.flatMap(({ name, flown }) =>
    flown !== null && (name === "apogee" || name === "opening") ? [flown.time] : [],
  );
  return clampedWindow({ from: -1, to: Math.max(2, ...times) + AROUND }, whole);
}

/** What a plot draws, from what was told: the same objects until that changes. */
function drawnOf(
  { curves, record }: DebriefData,
  { zero, predictedSpeed }: FlownViewProps["plot"],
  { height, speed, acceleration }: FlownLines,
) {
  const { predicted, residual } = curves ?? nothing;
  return {
    height: { flown: height, predicted: { time: predicted.time, value: predicted.height } },
    residual:
      residual.time.length === 0 ? null : { flown: { time: residual.time, value: residual.height }, predicted: null },
    speed: { flown: speed, predicted: predictedSpeed },
    acceleration: acceleration === null ? null : { flown: acceleration, predicted: null },
    flaws: (record?.flaws ?? []).map(({ from, to }) => ({ from: from - zero, to: to - zero })),
  };
}

/** Where an event stands, typed. */
function MoveField(props: { time: number; range: Stretch; onTime: (time: number) => void }) {
  const { time, range, onTime } = props;
  const [typed, type] = useState(time.toFixed(2));
  const value = readNumber(typed.replace(/\s*s$/, ""));
  const wrong = value === undefined || value < range.from - 0.005 || value > range.to + 0.005;
  const send = (): void => {
    if (!wrong && value !== undefined && Math.abs(value - time) > 0.004)
      onTime(Math.min(range.to, Math.max(range.from, value)));
  };
  return (
    <form
      className="flown-time"
      onSubmit={(event) => {
        event.preventDefault();
        send();
      }}
    >
      <TextField
        className={wrong ? "field wrong" : "field"}
        value={typed}
        onChange={type}
        onBlur={send}
        isInvalid={wrong}
        validationBehavior="aria"
        autoComplete="off"
        inputMode="decimal"
      >
        <Label>Seconds after lift-off</Label>
        <Input className="field-control" />
        {wrong && (
          <p className="field-error">{`Accepted: ${range.from.toFixed(2)} to ${range.to.toFixed(2)} s, between the events beside it.`}</p>
        )}
      </TextField>
    </form>
  );
}
