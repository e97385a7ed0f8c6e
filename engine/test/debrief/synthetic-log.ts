import { type EventHints, fillDistance, type LogSamples } from "../../src/index.js";
import { type Random, randomOf } from "../random.js";
import { type Instrument, recorded } from "./instrument.js";
import { type TrueFlight, trueFlight } from "./true-flight.js";

/** `clean`: 20 samples a second, a quiet sensor. `rough`: what is met on a windy field with an old instrument. */
export type LogClass = "clean" | "rough";

/** A record whose truth is known. */
export interface SyntheticLog {
  readonly flight: TrueFlight;
  readonly instrument: Instrument;
  readonly samples: LogSamples;
  /** True events, on the record's own clock [s]; main is null without a second opening. */
  readonly truth: TrueFlight["events"];
  /** What a plan knows of the flight. */
  readonly hints: EventHints;
}

/** One synthetic flight and its record: the same for the same seed and class. */
export function syntheticLog(seed: number, kind: LogClass, given: Partial<Instrument> = {}): SyntheticLog {
  const random = randomOf(seed);
  const flight = trueFlight(random);
  const instrument = { ...(kind === "clean" ? cleanInstrument(random) : roughInstrument(random)), ...given };
  const { samples, zero } = recorded(flight, instrument, random);
  const onClock = (t: number): number => (t - zero) * (1 + instrument.drift);
  const { events, planned } = flight;
  return {
    flight,
    instrument,
    samples,
    truth: {
      liftOff: onClock(events.liftOff),
      guideExit: onClock(events.guideExit),
      burnout: onClock(events.burnout),
      apogee: onClock(events.apogee),
      opening: onClock(events.opening),
      main: events.main === null ? null : onClock(events.main),
      landing: onClock(events.landing),
    },
    hints: {
      guideTravel: planned.guide.travel,
      thrust: planned.motor.thrust,
      lineStretch: planned.recovery.lineStretch,
      fillDistances: {
        first: fillDistance((planned.recovery.drogue ?? planned.recovery.main).canopy),
        main: fillDistance(planned.recovery.main.canopy),
      },
      ...(planned.recovery.main.opensAt === undefined ? {} : { mainOpensAt: planned.recovery.main.opensAt }),
    },
  };
}

/** Bay and sensor: 0.06 ± 0.03 s, never none [s]. */
const lagOf = (random: Random): number => Math.min(0.15, Math.max(0.005, 0.06 + 0.03 * random.normal()));

/** An accelerometer's own filter [s]. */
const filterOf = (random: Random): number => random.between(0.001, 0.013);

function cleanInstrument(random: Random): Instrument {
  const column = random.pick(["pressure", "height"] as const);
  return {
    rate: 20,
    column,
    lag: lagOf(random),
    noise: random.between(1, 3),
    wander: random.between(0, 2),
    wanderTime: 2,
    step: column === "pressure" ? 1 : random.pick([0, 0.1, 0.3048]),
    jitter: 0.01,
    drift: 1e-5 * random.normal(),
    timeStep: random.pick([0, 0.001, 0.01]),
    dropouts: 0,
    longestDropout: 0,
    transient: random.pick([1, -1]) * random.between(300, 1500),
    transientTime: random.between(0.08, 0.25),
    position: 0.001 * random.normal(),
    hump: 0,
    accelerometer: random.chance(0.5)
      ? null
      : {
          scale: 1 + 0.01 * random.normal(),
          offset: 0.3 * random.normal(),
          noise: random.between(0.1, 0.5),
          most: 500,
          sign: 1,
          withGravity: random.chance(0.7),
          jolt: random.pick([1, -1]) * random.between(20, 150),
          lag: filterOf(random),
        },
    before: random.between(3, 30),
    after: random.between(5, 20),
    restart: 0,
  };
}

function roughInstrument(random: Random): Instrument {
  const column = random.pick(["pressure", "height", "altitude"] as const);
  const pushes = random.chance(0.5);
  return {
    rate: random.pick([10, 20, 20, 50, 100]),
    column,
    lag: lagOf(random),
    noise: random.between(3, 10),
    wander: random.between(1, 5),
    wanderTime: random.between(0.5, 3),
    step: column === "pressure" ? random.pick([1, 10]) : random.pick([0.1, 0.3048, 0.3048, 1]),
    jitter: 0.08,
    drift: 5e-5 * random.normal(),
    timeStep: random.pick([0.001, 0.01]),
    dropouts: Math.floor(random.between(0, 5)),
    longestDropout: 0.3,
    // a bay that the charge's gas does not reach: the accelerometer feels the charge
    transient: pushes && random.chance(0.3) ? 0 : random.pick([1, -1]) * random.between(500, 3000),
    transientTime: random.between(0.06, 0.3),
    position: 0.001 * random.normal(),
    hump: random.between(-0.06, 0.06),
    accelerometer: !pushes
      ? null
      : {
          scale: random.chance(0.2) ? 0.97 : 1.02,
          offset: random.normal(),
          noise: random.between(0.3, 1.5),
          most: random.pick([75, 150, 300]),
          sign: random.pick([1, -1] as const),
          withGravity: random.chance(0.5),
          jolt: random.pick([1, -1]) * random.between(30, 200),
          lag: filterOf(random),
        },
    before: random.between(2, 60),
    after: random.between(4, 30),
    restart: random.chance(0.15) ? random.between(5, 40) : 0,
  };
}
