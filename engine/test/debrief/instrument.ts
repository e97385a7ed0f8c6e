import type { LogSamples } from "../../src/index.js";
import type { Random } from "../random.js";
import type { TrueFlight } from "./true-flight.js";

/** One altimeter, as it errs. */
export interface Instrument {
  /** Samples a second. */
  readonly rate: number;
  readonly column: "pressure" | "height" | "altitude";
  /** Time constant of bay and sensor, first order [s]. */
  readonly lag: number;
  /** One sigma of independent and of slowly wandering noise [Pa], and how long the latter hangs together [s]. */
  readonly noise: number;
  readonly wander: number;
  readonly wanderTime: number;
  /** Steps of the figures in the column's unit; 0: none. */
  readonly step: number;
  /** One sigma of a sample's own time, as a share of the spacing. */
  readonly jitter: number;
  /** Relative error of the clock. */
  readonly drift: number;
  /** Digits of the time. */
  readonly timeStep: number;
  /** Runs of rows that are missing: how many, and the longest [s]. */
  readonly dropouts: number;
  readonly longestDropout: number;
  /** Pressure in the bay when the charge fires [Pa], either sign; 0: none. Decay [s]. */
  readonly transient: number;
  readonly transientTime: number;
  /** Static error at the ports, as a share of the dynamic pressure; and the hump about Mach 1 [share]. */
  readonly position: number;
  readonly hump: number;
  readonly accelerometer: null | {
    readonly scale: number;
    readonly offset: number;
    readonly noise: number;
    readonly most: number;
    readonly sign: 1 | -1;
    /** Whether it reads 1 g at rest. */
    readonly withGravity: boolean;
    /** Jolt of the charge [m/s²]. */
    readonly jolt: number;
    /** Time constant [s]. */
    readonly lag: number;
  };
  /** On the pad before lift-off, and after landing [s]. */
  readonly before: number;
  readonly after: number;
  /** A first start on the pad, whose clock ran so long [s]; 0: none. */
  readonly restart: number;
}

/** Height by the standard atmosphere as an instrument's firmware has it, from section 15 of the check values [m]. */
const firmwareHeight = (pressure: number): number => 44330.76923 * (1 - (pressure / 101325) ** 0.1902632365);

/** A record of a true flight by an instrument, and the true time of the record's clock 0. */
export function recorded(
  flight: TrueFlight,
  instrument: Instrument,
  random: Random,
): { samples: LogSamples; zero: number } {
  const { rate, lag } = instrument;
  const fine = Math.max(1, Math.ceil(400 / rate));
  const { liftOff, opening, main, landing } = flight.events;
  /** Steps are short where the heights bend: a steady descent needs none between the samples. */
  const bends = (at: number): boolean =>
    (at > liftOff - 1 && at < opening + 6) || Math.abs(at - landing) < 2 || (main !== null && Math.abs(at - main) < 4);
  const begin = flight.events.liftOff - instrument.before;
  const end = flight.events.landing + instrument.after;
  const count = Math.floor((end - begin) * rate);
  const clock: number[] = [];
  const figures: number[] = [];
  const pushes: number[] = [];
  let bay = flight.pressureAt(0);
  let felt = 9.80665;
  let wander = 0;
  const bounce = random.between(0.25, 0.6);
  const lands = random.between(20, 60) * random.pick([1, -1]);
  const field = firmwareHeight(flight.pressureAt(0));
  const dropped = (t: number): boolean => drops.some(([a, b]) => t >= a && t < b);
  const drops = Array.from({ length: instrument.dropouts }, (): [number, number] => {
    const at = random.between(flight.events.liftOff - 2, flight.events.landing);
    return [at, at + random.between(0.2, 1) * instrument.longestDropout];
  });
  const { accelerometer } = instrument;
  let t = begin;
  for (let i = 0; i < count; i++) {
    const due = begin + (i + instrument.jitter * random.normal()) / rate;
    while (t < due) {
      // up to the sample's own time, with what is outside in the middle of the step
      const step = Math.min((bends(t) ? 1 / fine : 1) / rate, due - t);
      const middle = t + 0.5 * step;
      const h = flight.heightAt(middle);
      const moving = middle > flight.events.liftOff && middle < flight.events.landing;
      let outside = flight.pressureAt(h);
      if (moving && (instrument.position !== 0 || instrument.hump !== 0)) {
        const mach = flight.machAt(middle);
        const dynamic = 0.7 * outside * mach * mach;
        outside += dynamic * (instrument.position + instrument.hump * Math.exp(-(((mach - 0.98) / 0.06) ** 2)));
      }
      const since = middle - flight.fires;
      if (since >= 0 && since < 3) {
        const T = instrument.transientTime;
        outside += instrument.transient * Math.exp(-since / T) * Math.cos((bounce * 2 * Math.PI * since) / T);
      }
      bay += (outside - bay) * (lag > 0 ? 1 - Math.exp(-step / lag) : 1);
      if (accelerometer !== null) {
        let push = flight.feltAt(middle);
        if (since >= 0 && since < 0.06) push += accelerometer.jolt;
        const hit = middle - flight.events.landing;
        if (hit >= 0 && hit < 0.05) push += lands;
        felt += (push - felt) * (1 - Math.exp(-step / accelerometer.lag));
      }
      t = step < due - t ? t + step : due;
    }
    wander +=
      -wander / (instrument.wanderTime * rate) +
      instrument.wander * Math.sqrt(2 / (instrument.wanderTime * rate)) * random.normal();
    const pressure = bay + wander + instrument.noise * random.normal();
    const stamp = (i / rate) * (1 + instrument.drift);
    if (dropped(t)) continue;
    const exact =
      instrument.column === "pressure"
        ? pressure
        : firmwareHeight(pressure) - (instrument.column === "height" ? field : 0);
    clock.push(instrument.timeStep > 0 ? Math.round(stamp / instrument.timeStep) * instrument.timeStep : stamp);
    figures.push(instrument.step > 0 ? Math.round(exact / instrument.step) * instrument.step : exact);
    if (accelerometer !== null) {
      const rest = accelerometer.withGravity ? 0 : 9.80665;
      const read =
        accelerometer.sign * ((felt - rest) * accelerometer.scale) +
        accelerometer.offset +
        accelerometer.noise * random.normal();
      pushes.push(Math.max(-accelerometer.most, Math.min(accelerometer.most, read)));
    }
  }
  const again = Math.floor(instrument.restart * rate);
  const early = Array.from({ length: again }, (_, i) => i);
  const pad = figures[0]!;
  const samples: LogSamples = {
    time: Float64Array.from([...early.map((i) => i / rate), ...clock]),
    [instrument.column]: Float64Array.from([...early.map(() => pad), ...figures]),
    ...(accelerometer === null ? {} : { acceleration: Float64Array.from([...early.map(() => pushes[0]!), ...pushes]) }),
    marks: [],
  };
  return { samples, zero: begin };
}
