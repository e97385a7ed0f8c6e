import { writeFileSync } from "node:fs";
import { loadPlan, planToEngine } from "@delaywright/documents";
import {
  type DecisionInputs,
  decide,
  type FlightResult,
  fly,
  inputsWith,
  strengthOf,
  uncertainInputCount,
} from "@delaywright/engine";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { diskFiles } from "../../cli/src/io/files.js";

/*
 * Brute force: every flight flown once by the plain integrator, its delay drawn too, judged by the definitions alone.
 * Usage: node scripts/monte-carlo/run.mjs EXAMPLE DRAWS SEED
 */

const [plan = "", drawsText = "100000", seedText = "1", out = ""] = process.argv.slice(2);
const draws = Number(drawsText);
const loaded = await loadPlan(plan, diskFiles);
if (loaded.parts === undefined) throw new Error(`cannot load ${plan}`);
const made = planToEngine(loaded.parts);
if (!made.ok) throw new Error(`cannot translate ${plan}`);
const inputs: DecisionInputs = made.inputs;

const random = xoroshiro128plus(Number(seedText) * 7919 + 13);
const uniform = (): number => ((random.next() >>> 0) + 0.5) / 4294967296;
/** Box and Muller: not the product's own quantile function. */
const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
for (let i = 0; i < 1000; i++) uniform();

const decision = await decide(inputs, { seed: 1, draws: 10_000 });
const { limits, recovery, motor } = inputs;
const strength = strengthOf(decision.flight.model, limits, decision.flight.events.apogee?.position[2] ?? 0).speed;
const clock = motor.delay.kind === "none" ? "burnout" : motor.delay.clock;
const nominalBurnout = decision.flight.model.burn.end;

const outcomes = ["clean", "earlyFast", "lateFast", "leanFast", "low", "grounded", "holds"] as const;
const counts = decision.settings.map(
  () => Object.fromEntries(outcomes.map((o) => [o, 0])) as Record<(typeof outcomes)[number], number>,
);

/** Least airspeed from the first possible opening to the ground. */
function leastAirspeed(flight: FlightResult, from: number, to: number): number {
  let least = Number.POSITIVE_INFINITY;
  let [low, high] = [from, to];
  for (let round = 0; round < 4; round++) {
    const step = (high - low) / 60;
    let best = low;
    for (let t = low; t <= high; t += step) {
      const { airspeed } = flight.at(t);
      if (airspeed < least) {
        least = airspeed;
        best = t;
      }
    }
    low = Math.max(from, best - step);
    high = Math.min(to, best + step);
  }
  return least;
}

const z = new Float64Array(uncertainInputCount);
for (let i = 0; i < draws; i++) {
  for (let k = 0; k < z.length; k++) z[k] = normal();
  const flight = fly(inputsWith(inputs, inputs.spread, z), { tolerance: 1e-6 });
  const delayZ = normal();
  const { burnout, apogee, landing } = flight.events;
  if (burnout === null || apogee === null || landing === null) {
    for (const count of counts) count.grounded += 1;
    continue;
  }
  const first = burnout.time + recovery.lineStretch;
  let least: number | undefined;
  decision.settings.forEach((setting, s) => {
    const count = counts[s];
    if (count === undefined) return;
    const start = clock === "burnout" ? burnout.time : nominalBurnout;
    const time = Math.max(first, start + setting.delay + setting.delaySd * delayZ + recovery.lineStretch);
    if (time >= landing.time) {
      count.grounded += 1;
      return;
    }
    const at = flight.at(time);
    if (at.position[2] < limits.openingHeight) {
      count.low += 1;
      return;
    }
    if (at.airspeed < strength) count.holds += 1;
    if (at.airspeed < limits.openingSpeed) count.clean += 1;
    else {
      least ??= leastAirspeed(flight, first, landing.time);
      if (least > limits.openingSpeed) count.leanFast += 1;
      else if (time < apogee.time) count.earlyFast += 1;
      else count.lateFast += 1;
    }
  });
  if (i % 5000 === 0) process.stderr.write(`${plan}: ${i} of ${draws}\r`);
}

writeFileSync(
  out,
  `${JSON.stringify(
    {
      draws,
      seed: Number(seedText),
      settings: decision.settings.map((setting, s) => ({
        delay: setting.delay,
        ...Object.fromEntries(outcomes.map((o) => [o, (counts[s]?.[o] ?? 0) / draws])),
      })),
    },
    null,
    1,
  )}\n`,
);
