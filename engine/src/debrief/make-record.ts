import type { FieldAir } from "../air/field-air.js";
import { findEvents } from "./find-events.js";
import type { FlightRecord, FlightSpan, RecordFlaw } from "./flight-record.js";
import type { LogSamples } from "./log-samples.js";
import { type Axial, axialOf } from "./record/axial.js";
import { bridged } from "./record/bridged.js";
import { heightSource } from "./record/height-source.js";
import { noiseOf } from "./record/noise.js";
import { gapsAndRestarts, risingRows } from "./record/rows.js";
import { heightsOf } from "./record/rows-heights.js";
import { localSlopes } from "./record/slopes.js";
import { spikesIn } from "./record/spikes.js";

/** The pad's quiet stretch ends so long before rough lift-off [s]. */
const BEFORE_LIFT_OFF = 0.6;
/** No height [m], pressure [Pa], speed or acceleration of a flight is larger: it is a misread figure. */
const LARGEST = 200_000;
/** Half-width of the smoothing of heights to speeds [s]. */
const HALF_WIDTH = 0.35;

/**
 * One flight of a record made ready to read.
 *
 * Heights come from pressure where it was recorded, in the air of the day; a height that the instrument reckoned is put right
 * for the pad's temperature, as it goes by the standard atmosphere. What spoils them is marked in `flaws` and bridged.
 * Below 20 samples a second nothing is refused: the errors of the events grow with the spacing.
 *
 * @param span from `flightsIn`
 * @param air measured at the field that day; left out: the standard atmosphere
 * @throws RangeError where the span holds no column that moves, or fewer than 20 rows of rising time
 * @example
 * flightRecord(samples, flightsIn(samples)[0], air).heightError; // 0.31
 */
export function flightRecord(samples: LogSamples, span: FlightSpan, air?: FieldAir): FlightRecord {
  const source = heightSource(samples, span.from, span.to);
  const { rows, time: clock, spacing } = risingRows(samples, span.from, span.to);
  if (source === null || rows.length < 20)
    throw new RangeError(`rows ${span.from}…${span.to}: a flight needs 20 rows of rising time and a column that moves`);
  const zero = span.liftOff;
  const time = clock.map((t) => t - zero);
  const quiet = Math.max(time[0]! + 0.5, -BEFORE_LIFT_OFF);
  const flaws: RecordFlaw[] = gapsAndRestarts(samples, span, clock, spacing).map((f) => moved(f, -zero));
  const flawsOf = (kind: RecordFlaw["kind"], stretches: readonly (readonly [number, number])[]): void => {
    for (const [a, b] of stretches) flaws.push({ kind, from: time[a]!, to: time[b]! });
  };

  const column = (values: Float64Array | undefined): Float64Array | null => {
    if (values === undefined) return null;
    const picked = Float64Array.from(rows, (row) => (Math.abs(values[row]!) < LARGEST ? values[row]! : Number.NaN));
    return picked.some(Number.isFinite) ? picked : null;
  };
  const barometric = source === "pressure" || source === "height" || source === "altitude";
  let height: Float64Array;
  let heightError: number;
  if (barometric) {
    height = heightsOf(source, column(samples[source])!, time, quiet, air);
    flawsOf(
      "not-a-number",
      bridged(time, height).filter(([a, b]) => b - a >= 2),
    );
    heightError = noiseOf(time, height, quiet);
    for (const { begin, end, rise } of spikesIn(time, height, heightError))
      flaws.push({ kind: "spike", from: time[begin]!, to: time[end]!, rise });
  } else {
    height = new Float64Array(rows.length);
    heightError = Number.POSITIVE_INFINITY;
  }

  const raw = column(samples.acceleration);
  let axial: Axial | null = null;
  if (raw !== null) {
    bridged(time, raw);
    axial = axialOf(time, raw, barometric ? height : null, quiet);
    if (axial !== null) flawsOf("saturated", axial.saturated);
  }
  let speed: Float64Array;
  if (barometric) speed = localSlopes(time, height, HALF_WIDTH, []);
  else {
    speed = source === "speed" ? column(samples.speed)! : integral(time, axial?.acceleration ?? height);
    bridged(time, speed);
    height = integral(time, speed);
    heightError = 0.05 * height.reduce((most, h) => Math.max(most, h), 1);
  }
  const record: FlightRecord = {
    time,
    height,
    speed,
    heightsFrom: source,
    acceleration: axial?.acceleration ?? null,
    heightError,
    accelerationError: axial?.error ?? null,
    rate: spacing > 0 ? 1 / spacing : 0,
    flaws: flaws.sort((a, b) => a.from - b.from),
    zero,
    marks: samples.marks
      .filter((mark) => mark.time >= clock[0]! && mark.time <= clock[clock.length - 1]!)
      .map((mark) => ({ time: mark.time - zero, text: mark.text })),
  };
  if (!barometric) return record;
  const { liftOff, opening, landing } = findEvents(record);
  const breaks = [liftOff, opening, landing]
    .flatMap((event) => (event === null ? [] : [event.time]))
    .sort((a, b) => a - b);
  return { ...record, speed: localSlopes(time, height, HALF_WIDTH, breaks) };
}

const moved = (flaw: RecordFlaw, by: number): RecordFlaw => ({ ...flaw, from: flaw.from + by, to: flaw.to + by });

/** From 0 at time 0, by trapezoids; 0 before. */
function integral(time: Float64Array, rates: Float64Array): Float64Array {
  const sum = new Float64Array(time.length);
  for (let i = 1; i < time.length; i++)
    sum[i] = time[i]! <= 0 ? 0 : sum[i - 1]! + 0.5 * (rates[i]! + rates[i - 1]!) * (time[i]! - time[i - 1]!);
  return sum;
}
