import { writeFileSync } from "node:fs";
import { type ClimbMiss, climbMissOf, type FitMiss, fitFiguresOf } from "../../engine/test/debrief/fit-study.js";
import { type LogClass, syntheticLog } from "../../engine/test/debrief/synthetic-log.js";
import { type EventMiss, figuresOf, missesOf, promised } from "../../engine/test/debrief/truth-study.js";

/*
 * Every synthetic flight is recorded twice, by a clean and by a rough instrument, and its events are found again.
 * Usage: node scripts/debrief-truth/run.mjs FLIGHTS SEED
 */

const [flightsText = "500", seedText = "1", out = ""] = process.argv.slice(2);
const flights = Number(flightsText);
const seed = Number(seedText);
const names = ["liftOff", "guideExit", "burnout", "apogee", "opening", "main", "landing"] as const;
const digits = (x: number, places: number): number => Number(x.toFixed(places));

function studyOf(kind: LogClass): object {
  const misses: EventMiss[] = [];
  const climbs: (ClimbMiss | null)[] = [];
  for (let i = 0; i < flights; i++) {
    const log = syntheticLog(seed + i, kind);
    misses.push(...missesOf(log, seed + i));
    climbs.push(climbMissOf(log));
    if (i % 25 === 24) process.stderr.write(`${kind}: ${i + 1} of ${flights}\r`);
  }
  const table = (own: readonly EventMiss[]) =>
    names.map((name) => {
      const f = figuresOf(name, own, promised[kind]);
      return {
        event: name,
        count: f.count,
        found: digits(f.found, 4),
        withinPromise: digits(f.within, 4),
        bias: digits(f.bias, 4),
        biasError: digits(f.biasError, 4),
        rootMeanSquare: digits(f.rootMeanSquare, 4),
        largest: digits(f.largest, 3),
        coverageOf90: digits(f.coverage, 4),
      };
    });
  const all = table(misses);
  process.stdout.write(`${kind}, ${flights} flights, promised within ${promised[kind]} s\n`);
  console.table(all);
  const fitted = climbs.filter((each) => each !== null);
  const factor = (pick: (climb: ClimbMiss) => FitMiss) => {
    const f = fitFiguresOf(fitted.map(pick));
    return {
      converged: digits(f.count / flights, 4),
      bias: digits(f.bias, 5),
      biasError: digits(f.biasError, 5),
      rootMeanSquare: digits(f.rootMeanSquare, 5),
      largest: digits(f.largest, 4),
      meanStatedSd: digits(f.statedSd, 5),
      coverageOf90: digits(f.coverage, 4),
    };
  };
  const climb = { lnDrag: factor(({ drag }) => drag), lnImpulse: factor(({ impulse }) => impulse) };
  console.table(climb);
  return {
    promised: promised[kind],
    climb,
    events: all,
    withAccelerometer: table(misses.filter((m) => m.accelerometer)),
    barometerAlone: table(misses.filter((m) => !m.accelerometer)),
  };
}

const results = {
  date: new Date().toISOString().slice(0, 10),
  flights,
  seed,
  units: "seconds; coverageOf90: share of the stated 90 % intervals that hold the truth",
  clean: studyOf("clean"),
  rough: studyOf("rough"),
};
writeFileSync(out, `${JSON.stringify(results, null, 2)}\n`);
