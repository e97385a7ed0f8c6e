import { afterEach, expect, test, vi } from "vitest";
import { flightD, flightE, flightF } from "../../reference/trajectories/inputs.js";
import { fastWork, veeringWind } from "../../test/fast.js";
import { usualSpread } from "../../test/plan.js";
import { DrawnValues, setDraw } from "../flight/fast/draw.js";
import { fastFlight } from "../flight/fast/fast-flight.js";
import { FastOutcome } from "../flight/fast/outcome.js";
import { recordSize } from "../flight/fast/sizes.js";
import type { FastWork } from "../flight/fast/work.js";
import * as here from "./compiled.js";
import { drawnValues } from "./drawn-values.js";
import { drawNormals, drawSize } from "./draws.js";
import { drawTolerance } from "./fly-draw.js";
import { judgeFlight } from "./judge.js";
import { JudgeWork } from "./judge-work.js";
import type { OpeningSpec } from "./opening-spec.js";
import { judgedSize, sampleSize } from "./outcomes.js";

const plans = {
  "pitching, no wind": fastWork(flightD),
  "pitching, wind": fastWork(flightE),
  "pitching, winds aloft": fastWork({ ...flightE, wind: veeringWind }),
  aligned: fastWork(flightF, { model: "aligned" }),
  "never handed over": fastWork(flightE, { handOver: false }),
  "too weak to lift": fastWork({ ...flightD, rocket: { ...flightD.rocket, mass: 100 * flightD.rocket.mass } }),
};

const usual: OpeningSpec = {
  settings: [4, 6.5, 9, 11, 14].map((delay, i) => ({ delay, sd: 0.4 + 0.2 * i })),
  clock: "burnout",
  lineStretch: 0.5,
  speedLimit: 18,
  strengthSpeed: 35,
  floor: 60,
  fillDistance: 40,
  electronicsDelay: null,
  samples: 3,
};

const openings: readonly OpeningSpec[] = [
  usual,
  { ...usual, degrees: 4, clock: "ignition", electronicsDelay: 1, settings: usual.settings.slice(2), samples: 8 },
  { ...usual, settings: [], samples: 0 },
];

type Fly = typeof here.compiledFlight;
type Judge = typeof here.compiledJudgement;

/** Everything that a draw leaves behind, judged by each of the specs. */
function leftBy(fly: Fly, judge: Judge, work: FastWork, judges: readonly JudgeWork[], draw: number): unknown {
  const normals = new Float64Array(drawSize);
  const drawn = new DrawnValues();
  drawNormals(7, draw, normals);
  drawnValues(usualSpread, normals, drawn);
  setDraw(work, drawn);
  const out = fly(work, drawn.totalImpulse, drawn.burnTime, drawTolerance, new FastOutcome());
  const verdicts = judges.map((j) => {
    const judged = new Float64Array((1 + j.settingCount) * judgedSize);
    const samples = new Float64Array((1 + j.settingCount) * 8 * sampleSize);
    judge(j, work, out, 2, 0.3, judged, judgedSize, samples, sampleSize);
    return { judged, samples };
  });
  return { ...out, records: work.records.slice(0, out.recordCount * recordSize), verdicts };
}

const judges = () => openings.map((spec) => new JudgeWork(spec));

test("compiledFlight() and compiledJudgement() give what JavaScript gives, to the bit, whatever came before", () => {
  const [ours, theirs] = [judges(), judges()];
  for (let draw = 0; draw < 40; draw++)
    for (const [name, work] of Object.entries(plans)) {
      const plain = leftBy(fastFlight, judgeFlight, work, ours, draw);
      expect(leftBy(here.compiledFlight, here.compiledJudgement, work, theirs, draw), `${name}, draw ${draw}`).toEqual(
        plain,
      );
    }
});

test("compiledJudgement() of a flight flown in JavaScript, after another in the kernel, is of that flight", () => {
  const work = plans["pitching, wind"];
  const [ours, theirs] = [judges(), judges()];
  leftBy(here.compiledFlight, here.compiledJudgement, work, theirs, 1);
  const plain = leftBy(fastFlight, judgeFlight, work, ours, 2);
  expect(leftBy(fastFlight, here.compiledJudgement, work, theirs, 2)).toEqual(plain);
});

test("compiledJudgement() judges a flight that was changed since it was flown as it is now", () => {
  const work = plans["pitching, wind"];
  const judgedBy = (judge: Judge): Float64Array => {
    const j = new JudgeWork(usual);
    setDraw(work, new DrawnValues());
    const flight = here.compiledFlight(work, 1, 1, drawTolerance, new FastOutcome());
    flight.burnout += 1;
    const judged = new Float64Array(j.settingCount * judgedSize);
    judge(j, work, flight, 2, 0.3, judged, 0, new Float64Array(j.settingCount * 8 * sampleSize), 0);
    return judged;
  };
  expect(judgedBy(here.compiledJudgement)).toEqual(judgedBy(judgeFlight));
});

afterEach(() => {
  vi.unstubAllGlobals();
  vi.resetModules();
});

test("compiledFlight() flies in JavaScript where nothing may be compiled, and asks once", async () => {
  const work = plans["pitching, wind"];
  const usually = leftBy(here.compiledFlight, here.compiledJudgement, work, judges(), 3);
  vi.resetModules();
  const compile = vi.fn(function refused() {
    throw new Error("not allowed here");
  });
  vi.stubGlobal("WebAssembly", { Module: compile });
  const other = await import("./compiled.js");
  for (let i = 0; i < 2; i++)
    expect(leftBy(other.compiledFlight, other.compiledJudgement, work, judges(), 3)).toEqual(usually);
  expect(compile).toHaveBeenCalledTimes(1);
});
