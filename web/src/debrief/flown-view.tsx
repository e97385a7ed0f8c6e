import { type DebriefData, eventWords, type UnitSystem, upperFirst } from "@delaywright/documents";
import type { EventName } from "@delaywright/engine";
import { startTransition, useCallback, useEffect, useMemo, useRef, useState } from "react";
import { Button } from "react-aria-components";
import type { DebriefTold, FlownLines, Stretch } from "../compute/debrief/protocol.js";
import { PickField } from "../parts/index.js";
import { clampedWindow } from "../pictures/flown-view.js";
import { FlownFrame } from "./flown-frame.js";
import { FlownTools } from "./flown-tools.js";
import { flownDescription } from "./flown-words.js";
import { MoveField } from "./move-field.js";
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

/** The plot of a flight with its prediction: zoomed by buttons, its events moved by hand or by keys. */
export function FlownView({ told, plot, units, chosen, onChoose, onMove }: FlownViewProps) {
  const { data } = told;
  const { whole, ranges } = plot;
  const [asked, setAsked] = useState<Stretch | null>(null);
  // a plot is much to draw: hands on the page come first
  const show = useCallback((stretch: Stretch | null): void => startTransition(() => setAsked(stretch)), []);
  const window = useMemo(() => (asked === null ? whole : clampedWindow(asked, whole)), [asked, whole]);
  const lines = useStretch(plot, window);
  const event = data.events.find(({ name }) => name === chosen);
  const found = event?.flown ?? null;
  const range = chosen === null ? undefined : ranges[chosen];
  const handle = useRef<HTMLDivElement>(null);
  const at = found?.time ?? null;
  // an event that was just taken in hand comes into view, and its handle under the hand
  const held = useRef<EventName | null>(null);
  useEffect(() => {
    if (held.current === chosen) return;
    held.current = chosen;
    if (at === null) return;
    setAsked({ from: at - AROUND, to: at + AROUND });
    requestAnimationFrame(() => handle.current?.focus());
  }, [chosen, at]);
  const latest = useRef(onMove);
  latest.current = onMove;
  const done = useCallback(
    (to: number): void => {
      if (chosen !== null) latest.current(chosen, to);
    },
    [chosen],
  );
  const drawn = useMemo(() => drawnOf(data, plot, lines), [data, plot, lines]);
  const description = useMemo(() => flownDescription(data, units), [data, units]);
  const movable = data.events.filter(({ name, flown }) => flown !== null && ranges[name] !== undefined);
  return (
    <div className="flown">
      <FlownTools
        window={window}
        whole={whole}
        isWhole={asked === null}
        about={at}
        climb={useMemo(() => climbOf(data, whole), [data, whole])}
        show={show}
      />
      <FlownFrame
        window={window}
        drawn={drawn}
        events={data.events}
        chosen={chosen}
        range={range}
        units={units}
        description={description}
        handle={handle}
        onMoved={done}
      />
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
  { zero, predictedSpeed, predictedBand }: FlownViewProps["plot"],
  { height, speed, acceleration }: FlownLines,
) {
  const { predicted, residual } = curves ?? nothing;
  return {
    height: { flown: height, predicted: { time: predicted.time, value: predicted.height } },
    band: predictedBand,
    residual:
      residual.time.length === 0 ? null : { flown: { time: residual.time, value: residual.height }, predicted: null },
    speed: { flown: speed, predicted: predictedSpeed },
    acceleration: acceleration === null ? null : { flown: acceleration, predicted: null },
    flaws: (record?.flaws ?? []).map(({ from, to }) => ({ from: from - zero, to: to - zero })),
  };
}
