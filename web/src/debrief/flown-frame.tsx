import { amountIn, type DebriefEvent, eventWords, type UnitSystem } from "@delaywright/documents";
import type { EventName } from "@delaywright/engine";
import { memo, type RefObject, startTransition, useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { Stretch } from "../compute/debrief/protocol.js";
import { secondsWords } from "../pictures/figures.js";
import { FlownHandle } from "../pictures/flown-handle.js";
import { FlownPlot, type FlownPlotProps } from "../pictures/flown-plot.js";

export interface FlownFrameProps {
  readonly window: Stretch;
  /** The same object until what is drawn changes. */
  readonly drawn: Pick<FlownPlotProps, "height" | "band" | "residual" | "speed" | "acceleration" | "flaws">;
  readonly events: readonly DebriefEvent[];
  /** An event in hand; null: none. */
  readonly chosen: EventName | null;
  /** Where it may be moved. */
  readonly range: Stretch | undefined;
  readonly units: UnitSystem;
  readonly description: string;
  readonly handle: RefObject<HTMLDivElement | null>;
  /** It was let go somewhere else. */
  readonly onMoved: (time: number) => void;
}

/** Steps by which keys move an event, in a window of a second [s]. */
const STEP = 0.005;

/** The plot with the handle over it. What is dragged is drawn here: nothing around it is drawn anew on the way. */
export const FlownFrame = memo((props: FlownFrameProps) => {
  const { window, drawn, events, chosen, range, units, description, handle, onMoved } = props;
  const found = events.find(({ name }) => name === chosen)?.flown ?? null;
  const [draft, setDraft] = useState<number | null>(null);
  // where it was let go may not be drawn yet
  const last = useRef<number | null>(null);
  const drag = useCallback((to: number | null): void => {
    last.current = to;
    setDraft(to);
  }, []);
  const at = found?.time ?? null;
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was on its way ends where another event is taken in hand
  useEffect(() => drag(null), [chosen]);
  // it stays where it was let go until the debrief has it there
  const sent = useRef<number | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new place has come
  useEffect(() => {
    if (last.current === sent.current) drag(null);
  }, [at]);
  const time = draft ?? at;
  const marks = useMemo(
    () =>
      events.map(({ name, flown, predicted }) => ({
        name,
        word: eventWords(name),
        time: name === chosen ? time : (flown?.time ?? null),
        predicted: predicted?.time ?? null,
      })),
    [events, chosen, time],
  );
  return (
    <div className="flown-frame">
      <FlownPlot window={window} {...drawn} marks={marks} chosen={chosen} units={units} description={description} />
      {chosen !== null && range !== undefined && time !== null && (
        <FlownHandle
          handle={handle}
          label={`Move: ${eventWords(chosen)}`}
          window={window}
          time={time}
          range={range}
          words={`${secondsWords(time, 2)}${found?.height == null ? "" : `, found at ${amountIn(found.height, "distance", units)}`}`}
          step={Math.max(0.001, STEP * (window.to - window.from))}
          onMove={drag}
          onDone={() => {
            const to = last.current;
            if (to === null || to === at) return drag(null);
            sent.current = to;
            startTransition(() => onMoved(to));
          }}
        />
      )}
    </div>
  );
});
