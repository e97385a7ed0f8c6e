import {
  achievableSettings,
  type DecisionInputs,
  decide,
  type FlightResult,
  fly,
  learn,
  learnedDelayAt,
  oddsOverDelay,
  type Setting,
  type TaughtFlight,
  withLearned,
} from "../../src/index.js";
import type { Random } from "../random.js";
import { dayOf, Truth } from "./truth.js";

/** One opening of a season: the odds it was given, and whether it came clean. */
export interface Opening {
  readonly odds: number;
  readonly clean: boolean;
  /** Flights learned from before it. */
  readonly learned: number;
}

export interface SeasonOptions {
  readonly flights: number;
  readonly draws: number;
  /** One sigma of drag with which the flyer reckons; left out: the true one. */
  readonly believedDrag?: number;
  /** Factor on the sigma of the delay with which the flyer reckons; left out: 1. */
  readonly believedDelay?: number;
}

/** Share of plans whose speed limit is set for odds of about 0.9; the others' odds are anywhere. */
const aimedShare = 0.65;

/** Sigmas of a climb's fit: of a clean log and of a rough one (`scripts/debrief-truth` gives them). */
const fitSds = [0.008, 0.02] as const;

/** One sigma of an opening's and a burnout's time together [s]. */
const delayError = 0.1;

/** The day's weather, and what the flyer wants. */
function planOfDay(base: DecisionInputs, random: Random): DecisionInputs {
  const speed = 7 * random.uniform();
  const toward = 2 * Math.PI * random.uniform();
  const wind = { ...base.wind, kind: "power", east: speed, north: 0 } as DecisionInputs["wind"];
  const lean = random.uniform() < 0.5 ? 0 : 0.07 * random.uniform();
  const { delay } = base.motor;
  return {
    ...base,
    // the settings are judged, no cut is planned: a cut at home would be looked for in vain
    motor: { ...base.motor, delay: delay.kind === "adjustable" ? { ...delay, cuttingConfirmed: false } : delay },
    ...(base.wind.kind === "power" ? { wind } : {}),
    guide: { ...base.guide, tilt: lean, toward },
    limits: { ...base.limits, leastHolds: 0, leastClean: 0 },
  };
}

async function chosen(inputs: DecisionInputs, draws: number, seed: number): Promise<Setting> {
  const { toCut, settings } = await decide(inputs, { draws, seed });
  return settings.find(({ delay }) => delay === toCut?.delay)!;
}

/** A limit on the speed by which about so many come clean, from a first look with few draws. */
async function limitFor(inputs: DecisionInputs, random: Random, seed: number): Promise<number> {
  const { delay } = inputs.motor;
  const delays =
    delay.kind === "adjustable" ? achievableSettings(delay, inputs.tool, inputs.cutSoFar).map((s) => s.delay) : [];
  const looked = await oddsOverDelay(inputs, delays, { draws: 64, seed });
  const opened = looked.flatMap(({ odds, openingSpeed }) => (openingSpeed === null ? [] : [{ odds, openingSpeed }]));
  const { openingSpeed } = opened.reduce((a, b) => (b.odds.clean > a.odds.clean ? b : a));
  const { p05, p50, p95 } = openingSpeed;
  // speeds are about log-normal: the 90 % point lies 1.28 of its sigmas above the middle, the 95 % point 1.64
  if (random.uniform() < aimedShare) return p50 * (p95 / p50) ** 0.78;
  const place = random.uniform();
  return place < 0.5 ? p05 + 2 * place * (p50 - p05) : p50 + 2 * (place - 0.5) * (1.1 * p95 - p50);
}

/** Did it open slow enough and high enough? By the definitions alone, on the plain flight. */
function cameClean(flight: FlightResult, { recovery, limits }: DecisionInputs, delay: number): boolean {
  const { burnout, landing } = flight.events;
  if (burnout === null || landing === null) return false;
  const time = Math.max(burnout.time, burnout.time + delay) + recovery.lineStretch;
  if (time >= landing.time) return false;
  const { position, airspeed } = flight.at(time);
  return position[2] >= limits.openingHeight && airspeed < limits.openingSpeed;
}

/**
 * One season of one rocket on one motor type: plan, learn from all flights before, cut as suggested, fly, log, and again.
 *
 * The flights are plain ones of the true rocket in weather within its spread; logs are the truth with errors of the size of the
 * fits' own.
 */
export async function season(
  base: DecisionInputs,
  options: SeasonOptions,
  random: Random,
  seed: number,
): Promise<Opening[]> {
  const { flights, draws, believedDrag = base.spread.dragScale, believedDelay = 1 } = options;
  const truth = new Truth(base.spread, random);
  const past: TaughtFlight[] = [];
  const openings: Opening[] = [];
  let lot = 0;
  for (let n = 0; n < flights; n++) {
    if (random.uniform() < 0.4) lot += 1;
    const name = `lot ${lot}`;
    const day = planOfDay(base, random);
    const { seconds, fraction } = base.spread.delay;
    const delayPrior = { seconds: believedDelay * seconds, fraction: believedDelay * fraction };
    const believed = { ...day, spread: { ...day.spread, dragScale: believedDrag, delay: delayPrior } };
    const learned = learn(past, { rocket: "rocket", motor: "motor", lot: name }, believed.spread);
    const plan = n === 0 ? believed : withLearned(believed, learned);
    const limits = { ...plan.limits, openingSpeed: await limitFor(plan, random, seed + n) };
    const setting = await chosen({ ...plan, limits }, draws, seed + 1000 + n);

    const scales = truth.scales();
    const flight = fly(dayOf(day, scales, random), { tolerance: 1e-6 });
    const ownSd = learned.delay
      ? learnedDelayAt(learned.delay, setting.delay).sd
      : Math.max(delayPrior.seconds, delayPrior.fraction * setting.delay);
    const cutSd = Math.sqrt(Math.max(0, setting.delaySd ** 2 - ownSd ** 2));
    const delay = truth.delay(setting.delay, name) + cutSd * random.normal();
    openings.push({ odds: setting.odds.clean, clean: cameClean(flight, { ...day, limits }, delay), learned: n });

    const sd = fitSds[0] + (fitSds[1] - fitSds[0]) * random.uniform();
    const [a, b] = [random.normal(), random.normal()];
    past.push({
      rocket: "rocket",
      motor: "motor",
      lot: name,
      climb: {
        lnDrag: scales.lnDrag + sd * a,
        lnImpulse: scales.lnImpulse + sd * (0.5 * a + Math.sqrt(0.75) * b),
        covariance: [
          [sd * sd, 0.5 * sd * sd],
          [0.5 * sd * sd, sd * sd],
        ],
      },
      set: setting.delay,
      setError: cutSd,
      flown: { kind: "seen", delay: delay + delayError * random.normal(), error: delayError },
    });
  }
  return openings;
}
