import { type Learned, type LearnedDelay, ofAnotherLot } from "@delaywright/engine";
import type { PlanParts } from "../../load-plan.js";
import { formatQuantity } from "../../quantity/format.js";
import { given, si } from "../si.js";
import type { LearnedDocument } from "./learned.js";

/** Digits that a plan keeps: its odds are reckoned from these. */
const digits = 6;
const short = (value: number): number => Number(value.toPrecision(digits));
const time = (value: number): string => formatQuantity(value, "time", "s", { digits });

/** Names of what it was learned of. */
export interface LearnedOf {
  readonly rocket: string;
  readonly motor: string;
  readonly lot?: string;
}

/** Names of what a plan has. */
export function learnedNames({ rocket, motor, motorInHand }: PlanParts): LearnedOf {
  const lot = motorInHand?.document.lot;
  return { rocket: rocket.document.name, motor: motor.document.name, ...given("lot", lot) };
}

/**
 * What was learned, as a plan holds it: rounded to what the plan then reckons with.
 *
 * @param of names of the rocket and the motor type, and the lot of the motor in hand
 * @param accepted when the flyer accepted it
 * @example
 * const plan = { ...document, learned: learnedToDocument(learned, { rocket: "Demo", motor: "Demo H150" }) };
 */
export function learnedToDocument(learned: Learned, of: LearnedOf, accepted?: string): LearnedDocument {
  const scale = ({ mean, sd }: Learned["drag"]) => ({ factor: short(Math.exp(mean)), sd: short(sd) });
  const { rocket, motor, both } = learned.flights;
  return {
    rocket: of.rocket,
    motor: of.motor,
    ...given("lot", of.lot),
    drag: scale(learned.drag),
    impulse: scale(learned.impulse),
    correlation: short(learned.correlation),
    ...given("delay", learned.delay && delayToDocument(learned.delay)),
    flights: { rocket, motor, both },
    ...given("accepted", accepted),
  };
}

function delayToDocument({ mean, scale, motorScale, degrees, prior, seen, bounds }: LearnedDelay) {
  const sds = [0, 4, 8].map((place) => Math.sqrt(Math.max(0, scale[place]!))) as [number, number, number];
  const between = (i: number, j: number): number => {
    const both = sds[i]! * sds[j]!;
    return both > 0 ? Math.min(1, Math.max(-1, short(scale[3 * i + j]! / both))) : 0;
  };
  const correlations: [number, number, number] = [between(0, 1), between(0, 2), between(1, 2)];
  return {
    offset: time(mean[0]),
    offsetSd: time(sds[0]),
    rate: short(1 + mean[1]),
    rateSd: short(sds[1]),
    lot: short(mean[2]),
    lotSd: short(sds[2]),
    correlations,
    motorScale: short(motorScale),
    degrees: short(degrees),
    seconds: time(prior.seconds),
    fraction: prior.fraction,
    seen,
    bounds,
  };
}

function delayToEngine(delay: NonNullable<LearnedDocument["delay"]>): LearnedDelay {
  const sds = [si(delay.offsetSd, "time"), delay.rateSd, delay.lotSd] as const;
  const [offsetRate, offsetLot, rateLot] = delay.correlations;
  const table = [
    [1, offsetRate, offsetLot],
    [offsetRate, 1, rateLot],
    [offsetLot, rateLot, 1],
  ];
  return {
    mean: [si(delay.offset, "time"), delay.rate - 1, delay.lot],
    scale: table.flatMap((row, i) => row.map((correlation, j) => correlation * sds[i]! * sds[j]!)),
    motorScale: delay.motorScale,
    degrees: delay.degrees,
    prior: { seconds: si(delay.seconds, "time"), fraction: delay.fraction },
    seen: delay.seen,
    bounds: delay.bounds,
  };
}

/** What a plan holds as learned, in the engine's figures, whatever rocket and motor the plan now has. */
export function learnedToEngine(document: LearnedDocument): Learned {
  const scale = ({ factor, sd }: LearnedDocument["drag"]) => ({ mean: Math.log(factor), sd });
  const { rocket, motor, both } = document.flights;
  return {
    drag: scale(document.drag),
    impulse: scale(document.impulse),
    correlation: document.correlation,
    ...given("delay", document.delay && delayToEngine(document.delay)),
    flights: { rocket, motor, both },
  };
}

/**
 * As much of it as holds for a plan: of another rocket the drag does not, of another motor type neither impulse nor delay, of
 * another lot the lot's own share of the delay does not.
 *
 * @param now names of what the plan now has
 * @param priors one sigma of drag and impulse where nothing was learned
 * @returns undefined where none of it holds
 */
export function learnedFor(
  document: LearnedDocument,
  now: LearnedOf,
  priors: { readonly dragScale: number; readonly totalImpulse: number },
): Learned | undefined {
  const learned = learnedToEngine(document);
  const [rocket, motor] = [document.rocket === now.rocket, document.motor === now.motor];
  if (!rocket && !motor) return undefined;
  const { delay, flights } = learned;
  const lotHolds = document.lot !== undefined && document.lot === now.lot;
  return {
    drag: rocket ? learned.drag : { mean: 0, sd: priors.dragScale },
    impulse: motor ? learned.impulse : { mean: 0, sd: priors.totalImpulse },
    correlation: rocket && motor ? learned.correlation : 0,
    ...(motor && delay !== undefined ? { delay: lotHolds ? delay : ofAnotherLot(delay) } : {}),
    flights: {
      rocket: rocket ? flights.rocket : 0,
      motor: motor ? flights.motor : 0,
      both: rocket && motor ? flights.both : 0,
    },
  };
}
