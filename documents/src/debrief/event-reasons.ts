import type { EventReason } from "@delaywright/engine";

const reasons: Readonly<Record<EventReason, true>> = Object.freeze({
  "acceleration-rises": true,
  "height-leaves-noise": true,
  "travelled-guide": true,
  "acceleration-falls-through-zero": true,
  "speed-highest": true,
  "height-highest": true,
  "speed-crosses-zero": true,
  "pressure-spike": true,
  "acceleration-spike": true,
  "descent-slows": true,
  "descent-slows-again": true,
  "height-stops-changing": true,
  "record-ends": true,
  "instrument-mark": true,
  "moved-by-flyer": true,
});

/** A reason that was written down; null where it is none of ours. */
export function eventReason(text: string | undefined): EventReason | null {
  return text !== undefined && Object.hasOwn(reasons, text) ? (text as EventReason) : null;
}
