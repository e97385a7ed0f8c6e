import type { DebriefData, UnitSystem } from "@delaywright/documents";
import type { EventName } from "@delaywright/engine";
import { startTransition, useCallback, useEffect, useMemo, useRef } from "react";
import type { DebriefTold, FlownLines, Stretch } from "../compute/debrief/protocol.js";
import { clampedWindow, movedWindow, zoomedWindow } from "../pictures/flown-view.js";
import { FlownFrame } from "./flown-frame.js";
import { FlownMove } from "./flown-move.js";
import { type FlownStep, FlownTools } from "./flown-tools.js";
import { flownDescription } from "./flown-words.js";
import { useRemembered } from "./remembered.js";
import { useStretch } from "./use-stretch.js";

export interface FlownViewProps {
  /** Path of the flight. */
  readonly flight: string;
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
export function FlownView({ flight, told, plot, units, chosen, onChoose, onMove }: FlownViewProps) {
  const { data } = told;
  const { whole, ranges } = plot;
  const [asked, setAsked] = useRemembered<Stretch | null>(`${flight} zoom`, null);
  // a plot is much to draw: hands on the page come first
  const show = useCallback((stretch: Stretch | null): void => startTransition(() => setAsked(stretch)), [setAsked]);
  const window = useMemo(() => (asked === null ? whole : clampedWindow(asked, whole)), [asked, whole]);
  const lines = useStretch(plot, window);
  const event = data.events.find(({ name }) => name === chosen);
  const found = event?.flown ?? null;
  const range = chosen === null ? undefined : ranges[chosen];
  const handle = useRef<HTMLDivElement>(null);
  const at = found?.time ?? null;
  // an event that was just taken in hand comes into view, and its handle under the hand
  const held = useRef(chosen);
  useEffect(() => {
    if (held.current === chosen) return;
    held.current = chosen;
    if (at === null) return;
    setAsked({ from: at - AROUND, to: at + AROUND });
    requestAnimationFrame(() => handle.current?.focus());
  }, [chosen, at, setAsked]);
  const latest = useRef({ onMove, window, at });
  latest.current = { onMove, window, at };
  const done = useCallback(
    (to: number | null): void => {
      if (chosen !== null) latest.current.onMove(chosen, to);
    },
    [chosen],
  );
  const climb = useMemo(() => climbOf(data, whole), [data, whole]);
  const step = useCallback(
    (by: FlownStep): void => show(steppedWindow(by, { ...latest.current, whole, climb })),
    [show, whole, climb],
  );
  const drawn = useMemo(() => drawnOf(data, plot, lines), [data, plot, lines]);
  const description = useMemo(() => flownDescription(data, units), [data, units]);
  return (
    <div className="flown">
      <FlownTools
        isWhole={asked === null}
        isClosest={window.to - window.from < 0.6}
        isFirst={window.from <= whole.from}
        isLast={window.to >= whole.to}
        onStep={step}
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
      <FlownMove events={data.events} ranges={ranges} chosen={chosen} onChoose={onChoose} onTime={done} />
    </div>
  );
}

interface Shown {
  readonly window: Stretch;
  readonly whole: Stretch;
  readonly climb: Stretch;
  /** Of the event in hand, which stays in view; null: the middle does. */
  readonly at: number | null;
}

/** The window after a step; null: the whole flight. */
function steppedWindow(step: FlownStep, { window, whole, climb, at }: Shown): Stretch | null {
  switch (step) {
    case "closer":
      return zoomedWindow(window, 0.5, whole, at ?? undefined);
    case "farther":
      return zoomedWindow(window, 2, whole, at ?? undefined);
    case "earlier":
      return movedWindow(window, -0.5, whole);
    case "later":
      return movedWindow(window, 0.5, whole);
    case "whole":
      return null;
    case "climb":
      return climb;
  }
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
