import { type KeyboardEvent, type PointerEvent, type ReactNode, type RefObject, useCallback, useRef } from "react";
import { type FlownWindow, flownMargins, keyedTime } from "./flown-view.js";
import { scaleOf } from "./scale.js";
import { useWidth } from "./use-width.js";

export interface FlownHandleProps {
  readonly label: string;
  /** To give it the focus. */
  readonly handle?: RefObject<HTMLDivElement | null>;
  readonly window: FlownWindow;
  /** Where it stands, seconds after lift-off. */
  readonly time: number;
  /** Between which times it may be moved. */
  readonly range: FlownWindow;
  /** What stands there, in words: "3.42 s, 212 m". */
  readonly words: string;
  /** Smallest step of a key [s]. */
  readonly step: number;
  readonly onMove: (time: number) => void;
  /** It was let go, or a key was. */
  readonly onDone: () => void;
}

/** A handle over a plot of a flight, by which an event is moved: dragged, or by the arrow keys. */
export function FlownHandle(props: FlownHandleProps): ReactNode {
  const { label, handle, window, time, range, words, step, onMove, onDone } = props;
  const { box, print, room } = useWidth();
  const frame = useRef<HTMLDivElement | null>(null);
  // the same function each time: an element that is given another is measured anew
  const over = useCallback(
    (node: HTMLDivElement | null): void => {
      frame.current = node;
      box(node);
    },
    [box],
  );
  // nothing is measured while it is dragged
  const edge = useRef(0);
  const { left, right } = flownMargins(room);
  const x = scaleOf(window.from, window.to, left, room.width - right);
  const clamped = (wish: number): number => Math.min(range.to, Math.max(range.from, wish));
  const timeAt = ({ clientX }: PointerEvent): number => {
    const share = (clientX - edge.current - left) / Math.max(1, x.end - x.start);
    return clamped(window.from + share * (window.to - window.from));
  };
  const press = (event: KeyboardEvent): void => {
    const to = keyedTime(event, time, step, range);
    if (to === null) return;
    event.preventDefault();
    onMove(clamped(to));
  };
  const shown = time >= window.from && time <= window.to;
  return (
    <div className="flown-over" ref={over}>
      <span className="picture-print" ref={print} aria-hidden="true" />
      <div
        ref={handle}
        className="flown-handle"
        hidden={!shown}
        style={{ transform: `translateX(${x(time)}px)` }}
        role="slider"
        tabIndex={0}
        aria-label={label}
        aria-orientation="horizontal"
        aria-valuemin={Number(range.from.toFixed(3))}
        aria-valuemax={Number(range.to.toFixed(3))}
        aria-valuenow={Number(time.toFixed(3))}
        aria-valuetext={words}
        onKeyDown={press}
        onKeyUp={(event) => keyedTime(event, time, step, range) !== null && onDone()}
        onPointerDown={(event) => {
          edge.current = frame.current?.getBoundingClientRect().left ?? 0;
          event.currentTarget.setPointerCapture(event.pointerId);
          event.currentTarget.focus();
        }}
        onPointerMove={(event) => {
          if (event.currentTarget.hasPointerCapture(event.pointerId)) onMove(timeAt(event));
        }}
        onPointerUp={onDone}
        onPointerCancel={onDone}
      >
        <span aria-hidden="true">↔</span>
      </div>
    </div>
  );
}
