import type { DebriefData } from "@delaywright/documents";
import {
  type DecisionInputs,
  type FlightSampleChunk,
  flightSampleSpec,
  fly,
  type HeightFan,
  heightFan,
  joinFlightSamples,
  prepareFlightSample,
} from "@delaywright/engine";
import type { BandLine } from "./protocol.js";

/** Flights drawn for a band, and in one go. */
const DRAWS = 256;
const RUN = 32;

/** Later than any landing [s]. */
const NEVER = { delay: 1e4, delaySd: 0 };

type Foretold = Pick<DebriefData, "delay" | "predicted" | "model" | "seed">;

/**
 * Between which heights 9 in 10 of the plan's flights are, over time from the predicted lift-off.
 *
 * As far as the sample opens as the plan does: to the landing where the motor's charge opens it after the delay that was set,
 * else to the top.
 *
 * @param inputs of the plan as flown
 * @param pause awaited between runs; rejects to call it off
 * @returns null where no flight leaves the guide
 */
export async function predictedBand(
  inputs: DecisionInputs,
  { delay, predicted, model, seed }: Foretold,
  pause: () => Promise<void>,
): Promise<BandLine | null> {
  const flight = fly(inputs, { model });
  const { liftOff, apogee } = flight.events;
  if (liftOff === null || apogee === null) return null;
  const opens = inputs.recovery.motorCharge === "primary" && delay.set !== null;
  const setting = opens ? { delay: delay.set, delaySd: predicted.delaySd ?? 0 } : NEVER;
  const sample = prepareFlightSample(flightSampleSpec(inputs, setting, { seed, model, flight }));
  const chunks: FlightSampleChunk[] = [];
  for (let from = 0; from < DRAWS; from += RUN) {
    await pause();
    chunks.push(sample(from, from + RUN));
  }
  const all = joinFlightSamples(chunks);
  const up = heightFan(all, opens ? "climb" : "unopened");
  const until = opens ? Number.POSITIVE_INFINITY : apogee.time;
  return joined([up, ...(opens ? [heightFan(all, "descent")] : [])], until, liftOff.time);
}

/** One band of fans that follow each other: of two that overlap the first counts. */
function joined(fans: readonly HeightFan[], until: number, zero: number): BandLine | null {
  const [time, low, high]: [number[], number[], number[]] = [[], [], []];
  for (const fan of fans)
    fan.times.forEach((at, i) => {
      if (at > until || at - zero <= (time.at(-1) ?? Number.NEGATIVE_INFINITY)) return;
      time.push(at - zero);
      low.push(fan.p05[i] ?? 0);
      high.push(fan.p95[i] ?? 0);
    });
  return time.length < 2
    ? null
    : { time: Float64Array.from(time), low: Float64Array.from(low), high: Float64Array.from(high) };
}
