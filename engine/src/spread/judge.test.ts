import fc from "fast-check";
import { expect, test } from "vitest";
import { flightD, flightE, flightF } from "../../reference/trajectories/inputs.js";
import { bruteJudge, openingAt } from "../../test/brute-judge.js";
import { fastWork, flyDraw } from "../../test/fast.js";
import { openingOf } from "../../test/opening.js";
import { usualSpread } from "../../test/plan.js";
import { DrawnValues } from "../flight/fast/draw.js";
import { fastFlight } from "../flight/fast/fast-flight.js";
import { FastOutcome } from "../flight/fast/outcome.js";
import type { FastWork } from "../flight/fast/work.js";
import type { FlightInputs } from "../flight/inputs.js";
import { normalCdf, normalQuantile } from "../math/normal.js";
import { studentQuantile } from "../math/student.js";
import { drawnValues } from "./drawn-values.js";
import { drawNormals, drawSize } from "./draws.js";
import { judgeFlight } from "./judge.js";
import { JudgeWork } from "./judge-work.js";
import type { OpeningSpec } from "./opening-spec.js";
import { CLEAN, EARLY_FAST, FIRES_FIRST, GROUNDED, HOLDS, judgedSize, LATE_FAST, LEAN_FAST, LOW } from "./outcomes.js";

const delays = [0, 4, 6, 8, 10, 12, 13, 14, 16, 20, 40];

const spec = openingOf(delays, 4);

interface Judged {
  readonly work: FastWork;
  readonly flight: FastOutcome;
  readonly burnout: number;
  readonly judged: Float64Array;
  readonly samples: Float64Array;
}

function judge(inputs: FlightInputs, by: OpeningSpec, drawn = new DrawnValues()): Judged {
  const work = fastWork(inputs);
  const flight = flyDraw(work, drawn);
  const judged = new Float64Array(by.settings.length * judgedSize);
  const samples = new Float64Array(by.settings.length * by.samples * 3);
  const burnout = work.tables.model.burn.end;
  judgeFlight(new JudgeWork(by), work, flight, burnout, 0.5, judged, 0, samples, 0);
  return { work, flight, burnout, judged, samples };
}

/** Odds by opening one flight at very many delays, evenly spread over the delay's distribution. */
function brute({ work, flight, burnout }: Judged, by: OpeningSpec, setting: number, count: number): Float64Array {
  const { delay, sd } = by.settings[setting]!;
  const open = bruteJudge(work, flight, by);
  const mean = openingAt(by, flight, burnout, delay);
  const odds = new Float64Array(judgedSize);
  const { degrees } = by;
  const scatter = (p: number): number =>
    degrees === undefined ? normalQuantile(p) : studentQuantile(p, degrees) * Math.sqrt((degrees - 2) / degrees);
  for (let i = 0; i < count; i++) {
    const time = mean + (sd > 0 ? sd * scatter((i + 0.5) / count) : 0);
    const { outcome, holds } = open(time);
    odds[outcome]! += 1 / count;
    if (holds) odds[HOLDS]! += 1 / count;
  }
  return odds;
}

const cases: Readonly<Record<string, readonly [FlightInputs, Partial<OpeningSpec>]>> = {
  d: [flightD, {}],
  "e, mostly lean": [flightE, {}],
  "e, always too fast": [flightE, { speedLimit: 15 }],
  "f, a fast limit and a weak canopy": [flightF, { speedLimit: 30, strengthSpeed: 25 }],
  "d, top below the floor": [flightD, { floor: 5000 }],
  "d, floor passed on the way up": [flightD, { floor: 600 }],
  "d, a canopy that fills slowly": [flightD, { fillDistance: 90 }],
  "d, delay counted from ignition": [flightD, { clock: "ignition" }],
};

test("judgeFlight() integrates the delay as brute force does, whatever the flight", () => {
  const count = 200_000;
  const seen = new Set<number>();
  for (const [name, [inputs, change]] of Object.entries(cases)) {
    const by = { ...spec, ...change };
    const drawn = { ...new DrawnValues(), burnTime: 1.08, dragScale: 0.95 };
    const result = judge(inputs, by, drawn);
    // three settings get the full count, the rest a tenth of it
    by.settings.forEach((_, s) => {
      const many = s % 4 === 1 ? count : count / 10;
      const odds = brute(result, by, s, many);
      for (let k = 0; k <= HOLDS; k++) {
        const exact = result.judged[s * judgedSize + k]!;
        // each edge of a class rounds to one delay; edges are found to 1e-8 of a step
        expect(Math.abs(exact - odds[k]!), `${name}, ${delays[s]} s, figure ${k}`).toBeLessThan(8 / many);
        if (exact > 0.01) seen.add(k);
      }
    });
  }
  // every outcome, and holds, has been met
  expect([...seen].sort()).toEqual([CLEAN, EARLY_FAST, LATE_FAST, LEAN_FAST, LOW, GROUNDED, HOLDS]);
});

test("judgeFlight() integrates a delay that flights have taught, a Student-t, as brute force does", () => {
  const count = 10_000;
  for (const degrees of [4, 11]) {
    const settings = [8, 12, 16].map((delay) => ({ delay, sd: 1.2 }));
    const by = { ...spec, degrees, settings };
    const result = judge(flightD, by);
    by.settings.forEach((_, s) => {
      const odds = brute(result, by, s, count);
      for (let k = 0; k <= HOLDS; k++)
        expect(Math.abs(result.judged[s * judgedSize + k]! - odds[k]!), `${degrees}, setting ${s}`).toBeLessThan(
          8 / count,
        );
    });
  }
});

test("judgeFlight() samples openings of a Student-t at its own quantiles", () => {
  const settings = [{ delay: 12, sd: 1.1 }];
  const by = { ...spec, settings, degrees: 6, samples: 8 };
  const { flight, burnout, samples } = judge(flightD, by);
  for (let k = 0; k < 8; k++) {
    const off = 1.1 * studentQuantile((k + 0.5) / 8, 6) * Math.sqrt(4 / 6);
    expect(samples[3 * k + 2]! + flight.apogeeTime).toBeCloseTo(openingAt(by, flight, burnout, 12) + off, 6);
  }
});

test("judgeFlight() agrees with brute force on random flights under random limits", () => {
  const limits = fc.record({
    draw: fc.nat(10_000),
    speedLimit: fc.double({ min: 8, max: 30, noNaN: true }),
    strengthSpeed: fc.double({ min: 10, max: 60, noNaN: true }),
    floor: fc.double({ min: 20, max: 1200, noNaN: true }),
    fillDistance: fc.double({ min: 2, max: 80, noNaN: true }),
  });
  const work = fastWork(flightE);
  const burnout = work.tables.model.burn.end;
  const drawn = new DrawnValues();
  const count = 10_000;
  fc.assert(
    fc.property(limits, ({ draw, ...change }) => {
      const settings = [6, 11, 15].map((delay) => ({ delay, sd: 1.2 }));
      const by: OpeningSpec = { ...spec, ...change, settings, samples: 0 };
      const flight = flyDraw(work, drawnValues(usualSpread, drawNormals(9, draw, new Float64Array(drawSize)), drawn));
      const judged = new Float64Array(3 * judgedSize);
      judgeFlight(new JudgeWork(by), work, flight, burnout, 0.5, judged, 0, new Float64Array(), 0);
      const result = { work, flight, burnout, judged, samples: new Float64Array() };
      settings.forEach((_, s) => {
        const odds = brute(result, by, s, count);
        for (let k = 0; k <= HOLDS; k++)
          expect(Math.abs(judged[s * judgedSize + k]! - odds[k]!), `${s}, figure ${k}`).toBeLessThan(8 / count);
      });
    }),
    { numRuns: 40 },
  );
});

test("judgeFlight() judges a flight in very many short steps as it does one in few", () => {
  const few = judge(flightD, spec);
  const work = fastWork(flightD);
  const flight = fastFlight(work, 1, 1, 1e-10, new FastOutcome());
  expect(flight.recordCount).toBeGreaterThan(250);
  const judged = new Float64Array(few.judged.length);
  judgeFlight(new JudgeWork({ ...spec, samples: 0 }), work, flight, few.burnout, 0.5, judged, 0, new Float64Array(), 0);
  for (const [i, odds] of few.judged.entries()) expect(Math.abs(judged[i]! - odds)).toBeLessThan(1e-3);
});

test("judgeFlight() with an exact delay gives one outcome with certainty", () => {
  const by = { ...spec, settings: delays.map((delay) => ({ delay, sd: 0 })) };
  for (const inputs of [flightD, flightE]) {
    const result = judge(inputs, by);
    by.settings.forEach((_, s) => {
      const odds = brute(result, by, s, 1);
      for (let k = 0; k <= HOLDS; k++) expect(result.judged[s * judgedSize + k]).toBe(odds[k]);
    });
  }
});

test("judgeFlight(): the six outcomes sum to 1 to 1e-12, and it holds at least as often as it opens clean", () => {
  for (const [name, [inputs, change]] of Object.entries(cases)) {
    const by = { ...spec, ...change };
    const { judged } = judge(inputs, by);
    for (let s = 0; s < by.settings.length; s++) {
      const odds = judged.subarray(s * judgedSize, (s + 1) * judgedSize);
      const sum = odds.subarray(0, HOLDS).reduce((a, b) => a + b, 0);
      expect(Math.abs(sum - 1), name).toBeLessThan(1e-12);
      if (by.strengthSpeed >= by.speedLimit) expect(odds[HOLDS], name).toBeGreaterThanOrEqual(odds[CLEAN]! - 1e-12);
      expect(Math.min(...odds), name).toBeGreaterThanOrEqual(0);
    }
  }
});

test("judgeFlight(): a flight that never slows down below the limit is lean at every setting, but for low and grounded", () => {
  const { judged } = judge(flightE, { ...spec, speedLimit: 15 });
  for (let s = 0; s < delays.length; s++) {
    const odds = judged.subarray(s * judgedSize, (s + 1) * judgedSize);
    expect(odds[LEAN_FAST]! + odds[LOW]! + odds[GROUNDED]!).toBeCloseTo(1, 12);
  }
});

test("judgeFlight(): a top below the floor is low or grounded at every setting", () => {
  const { judged } = judge(flightD, { ...spec, floor: 5000 });
  for (let s = 0; s < delays.length; s++)
    expect(judged[s * judgedSize + LOW]! + judged[s * judgedSize + GROUNDED]!).toBeCloseTo(1, 12);
});

test("judgeFlight(): odds of firing before the electronics has opened the rocket", () => {
  const by = { ...spec, electronicsDelay: 1 };
  const { judged, flight } = judge(flightD, by);
  by.settings.forEach(({ delay, sd }, s) => {
    // fires at burnout + delay + scatter; electronics fires 1 s after the top and has opened 0.5 s later
    const z = (flight.apogeeTime + 1 + 0.5 - (flight.burnout + delay)) / sd;
    expect(judged[s * judgedSize + FIRES_FIRST]).toBeCloseTo(normalCdf(z), 12);
  });
  expect(judge(flightD, spec).judged[FIRES_FIRST]).toBe(0);
});

test("judgeFlight(): a delay from ignition ignores the drawn burn time, one from burnout follows it", () => {
  const drawn = { ...new DrawnValues(), burnTime: 1.2 };
  const at = (clock: OpeningSpec["clock"]) => {
    const { samples, flight } = judge(flightD, { ...spec, clock, samples: 1 }, drawn);
    // third number of the sample: seconds after the top, at the median of the delay
    return samples[3 * delays.indexOf(12) + 2]! + flight.apogeeTime;
  };
  const { end } = fastWork(flightD).tables.model.burn;
  expect(at("ignition")).toBeCloseTo(end + 12.5, 9);
  expect(at("burnout")).toBeCloseTo(1.2 * end + 12.5, 9);
});

test("judgeFlight(): sampled openings are the flight's own motion, and grounded ones are no numbers", () => {
  const { samples, flight, work } = judge(flightD, spec);
  const open = bruteJudge(work, flight, spec);
  spec.settings.forEach(({ delay, sd }, s) => {
    for (let k = 0; k < spec.samples; k++) {
      const o = 3 * (s * spec.samples + k);
      const time = openingAt(spec, flight, 0, delay) + sd * normalQuantile((k + 0.5) / spec.samples);
      const { outcome } = open(time);
      if (outcome === GROUNDED) expect(samples.subarray(o, o + 3)).toEqual(new Float64Array(3).fill(Number.NaN));
      else {
        expect(samples[o + 2]).toBeCloseTo(Math.max(time, flight.burnout + 0.5) - flight.apogeeTime, 9);
        if (outcome === CLEAN) expect(samples[o]).toBeLessThan(spec.speedLimit);
        if (outcome !== LOW) expect(samples[o + 1]).toBeGreaterThan(spec.floor);
      }
    }
  });
});

test("judgeFlight(): a flight that never flew is grounded at every setting", () => {
  const work = fastWork(flightD);
  const judged = new Float64Array(delays.length * judgedSize);
  judgeFlight(new JudgeWork(spec), work, new FastOutcome(), 1, 0.5, judged, 0, new Float64Array(delays.length * 12), 0);
  for (let s = 0; s < delays.length; s++) expect(judged[s * judgedSize + GROUNDED]).toBe(1);
});
