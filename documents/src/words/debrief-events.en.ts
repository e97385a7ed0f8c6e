import type { EventMeaning, EventName, EventReason } from "@delaywright/engine";
import type { DebriefEvent } from "../answer/debrief-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { amount, figureWords, upperFirst } from "./numbers.en.js";

const names: Readonly<Record<EventName, string>> = Object.freeze({
  liftOff: "lift-off",
  guideExit: "off the guide",
  burnout: "burnout",
  apogee: "top",
  opening: "opening",
  main: "main opening",
  landing: "landing",
});

/** An event of a flight, for a table: `lift-off`, `top`. */
export function eventWords(name: EventName): string {
  return names[name];
}

const reasons: Readonly<Record<EventReason, string>> = Object.freeze({
  "acceleration-rises": "acceleration rises",
  "height-leaves-noise": "height leaves its noise",
  "travelled-guide": "the guide's length travelled",
  "acceleration-falls-through-zero": "acceleration falls through zero",
  "speed-highest": "speed is highest",
  "height-highest": "height is highest",
  "speed-crosses-zero": "speed crosses zero",
  "pressure-spike": "the charge felt in the pressure",
  "acceleration-spike": "a jerk in the acceleration",
  "descent-slows": "descent slows",
  "descent-slows-again": "descent slows again",
  "height-stops-changing": "height stops changing",
  "record-ends": "the record ends",
  "instrument-mark": "the instrument's own mark",
  "moved-by-flyer": "moved by you",
});

/** By what an event was placed where it is. */
export function eventReasonWords(reason: EventReason | null): string {
  return reason === null ? "as written down" : reasons[reason];
}

/** What a difference may mean; `{t}` its seconds, `{h}` its height. */
const meanings: Readonly<Record<Exclude<EventMeaning, "as-predicted" | "not-found" | "not-predicted">, string>> =
  Object.freeze({
    "starts-clock": "all times count from it.",
    "slow-off-guide": "{t} later than predicted: less thrust at the start, more mass, or friction on the guide.",
    "fast-off-guide": "{t} sooner than predicted: more thrust at the start, or less mass.",
    "burnt-longer":
      "{t} later than predicted: it burnt longer than its stated curve. One motor tells little of its type.",
    "burnt-shorter":
      "{t} sooner than predicted: it burnt shorter than its stated curve. One motor tells little of its type.",
    "top-higher": "{h} higher than predicted: less drag or more impulse than reckoned, or less mass.",
    "top-lower":
      "{h} lower than predicted: more drag or less impulse than reckoned, more mass, or a path that leans more.",
    "top-earlier":
      "{t} sooner than predicted, at about the height that was predicted: a faster climb that was braked more, or a path that leans more.",
    "top-later":
      "{t} later than predicted, at about the height that was predicted: a slower climb that was braked less.",
    "delay-longer":
      "{t} later than the delay as set should have opened it: the delay burnt longer, or the charge took long to open it.",
    "delay-shorter": "{t} sooner than the delay as set should have opened it: the delay burnt shorter.",
    "opened-early": "{t} sooner than predicted: what fires it sees the top too early, or something else opened it.",
    "opened-late": "{t} later than predicted: what fires it sees the top too late, or it took long to open.",
    "main-early": "{t} sooner than predicted: it opened higher, or fell faster before.",
    "main-late": "{t} later than predicted: it opened lower, or fell slower before.",
    "down-early": "{t} sooner than predicted: it sank faster than reckoned, or opened lower.",
    "down-late": "{t} later than predicted: it sank slower than reckoned, opened higher, or met rising air.",
  });

/**
 * What the difference between an event and its prediction means, cautiously: one sentence.
 *
 * @example
 * meaningSentence(event); // "Top: 27 m lower than predicted: more drag or less impulse than reckoned, …"
 */
export function meaningSentence(event: DebriefEvent, units: UnitSystem = "metric"): string {
  const { name, meaning, difference, heightDifference } = event;
  const head = upperFirst(eventWords(name));
  if (meaning === "not-found") return `${head}: not found in the record.`;
  if (meaning === "not-predicted") return `${head}: found, though the plan predicts none.`;
  // only the top is judged by its height, too
  if (meaning === "as-predicted")
    return `${head}: at the predicted time${name === "apogee" ? " and height" : ""}, as far as the record tells.`;
  const text = meanings[meaning]
    .replace("{t}", amount(Math.abs(difference ?? 0), "s", 2))
    .replace("{h}", figureWords(Math.abs(heightDifference ?? 0), "distance", units));
  return `${head}: ${text}`;
}

/** Events worth a sentence: not those that were neither predicted nor found. */
export function toldEvents(events: readonly DebriefEvent[]): readonly DebriefEvent[] {
  return events.filter(({ predicted, flown }) => predicted !== null || flown !== null);
}
