import { expect, test } from "vitest";
import { flightD, flightE, flightF, tableDrag, windFrom } from "../../../reference/trajectories/inputs.js";
import { fastWork, flyDraw, veeringWind } from "../../../test/fast.js";
import { usualSpread } from "../../../test/plan.js";
import { exampleRocket } from "../../rocket/example-rocket.js";
import { airspeed2, recordAt } from "../../spread/crossings.js";
import { drawnInputs } from "../../spread/drawn-inputs.js";
import { drawnValues } from "../../spread/drawn-values.js";
import { drawNormals, drawSize } from "../../spread/draws.js";
import { fly } from "../fly.js";
import type { FlightInputs } from "../inputs.js";
import type { FlightOptions } from "../options.js";
import type { FlightResult } from "../result.js";
import { DrawnValues } from "./draw.js";
import type { FastOutcome } from "./outcome.js";
import { recordSize } from "./sizes.js";
import type { FastWork } from "./work.js";

/** Delays at which an opening may be judged, half a second of line stretch included [s]. */
const delays = [4.5, 6.5, 8.5, 10.5, 12.5, 14.5, 16.5, 20.5];

interface Misses {
  time: number;
  height: number;
  airspeed: number;
  landing: number;
}

function misses(work: FastWork, fast: FastOutcome, plain: FlightResult): Misses {
  const { apogee, burnout, landing } = plain.events;
  if (!apogee || !burnout || !landing || !fast.flew) throw new Error("it did not fly");
  expect(Math.abs(fast.burnout - burnout.time)).toBeLessThan(1e-9);
  const airspeed = delays
    .map((delay) => fast.burnout + delay)
    .filter((t) => t < Math.min(fast.landingTime, landing.time))
    .map((t) => {
      const offset = recordAt(work.records, fast.recordCount, t) * recordSize;
      const share = (t - work.records[offset]!) / work.records[offset + 1]!;
      return Math.abs(Math.sqrt(airspeed2(work, offset, share)) - plain.at(t).airspeed);
    });
  return {
    time: Math.abs(fast.apogeeTime / apogee.time - 1),
    height: Math.abs(fast.apogeeHeight / apogee.position[2] - 1),
    airspeed: Math.max(...airspeed),
    landing: Math.hypot(fast.landingEast - landing.position[0], fast.landingNorth - landing.position[1]),
  };
}

/**
 * What `physics` and the bench ask of a draw: top within 1e-4, airspeed at the openings within 0.05 m/s; some metres at the
 * ground. A body still swinging at the top is laid into the airflow there: at the end of a step by the fast flight, at the top
 * by the plain one, so that only the way up can be compared.
 */
function expectClose(m: Misses, what: string, toTheTop = false): void {
  expect(m.time, `${what}: apogee time`).toBeLessThan(1e-4);
  expect(m.height, `${what}: apogee height`).toBeLessThan(1e-4);
  if (toTheTop) return;
  expect(m.airspeed, `${what}: airspeed at an opening`).toBeLessThan(0.05);
  expect(m.landing, `${what}: landing`).toBeLessThan(3);
}

const cases: Readonly<Record<string, readonly [FlightInputs, FlightOptions]>> = {
  d: [flightD, {}],
  e: [flightE, {}],
  f: [flightF, {}],
  "d, aligned": [flightD, { model: "aligned" }],
  "e, pitching to the top": [flightE, { handOver: false }],
  "e, drag table": [{ ...flightE, rocket: { ...flightE.rocket, drag: tableDrag } }, {}],
  "e, built-up drag": [{ ...flightE, rocket: exampleRocket }, {}],
  "d, wind that stops growing": [{ ...flightD, wind: { ...windFrom(5, 270), gradientHeight: 300 } }, {}],
  "d, ballast and a warm high field": [
    {
      ...flightD,
      ballast: { mass: 0.15, at: 0.3 },
      air: { elevation: 1200, latitude: 0.7, temperature: 303, humidity: 0.5 },
    },
    {},
  ],
};

test("fastFlight() keeps its accuracy on the reference flights and their variants", () => {
  for (const [name, [inputs, options]] of Object.entries(cases)) {
    const work = fastWork(inputs, options);
    const m = misses(work, flyDraw(work), fly(inputs, options));
    expectClose(m, name, options.handOver === false);
  }
});

function expectCloseDraws(name: string, inputs: FlightInputs): void {
  const drawn: DrawnValues = new DrawnValues();
  const work = fastWork(inputs);
  for (let draw = 0; draw < 16; draw++) {
    drawnValues(usualSpread, drawNormals(3, draw, new Float64Array(drawSize)), drawn);
    const m = misses(work, flyDraw(work, drawn), fly(drawnInputs(inputs, usualSpread, 3, draw)));
    expectClose(m, `${name}, draw ${draw}`);
  }
}

test("fastFlight() keeps its accuracy on draws of the usual spread", () => {
  expectCloseDraws("d", flightD);
  expectCloseDraws("built-up drag", { ...flightE, rocket: exampleRocket });
});

test("fastFlight() keeps its accuracy in winds aloft", () => {
  const inputs = { ...flightD, wind: veeringWind };
  for (const options of [{ model: "aligned" as const }, { handOver: false }, {}]) {
    const work = fastWork(inputs, options);
    const what = `winds aloft ${JSON.stringify(options)}`;
    expectClose(misses(work, flyDraw(work), fly(inputs, options)), what, "handOver" in options);
  }
  expectCloseDraws("winds aloft", inputs);
});
