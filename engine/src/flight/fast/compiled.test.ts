import { afterEach, expect, test, vi } from "vitest";
import { flightD, flightE, flightF } from "../../../reference/trajectories/inputs.js";
import { fastWork, veeringWind } from "../../../test/fast.js";
import { usualSpread } from "../../../test/plan.js";
import { drawnValues } from "../../spread/drawn-values.js";
import { drawNormals, drawSize } from "../../spread/draws.js";
import { drawTolerance } from "../../spread/fly-draw.js";
import { CompiledFlight, compiledFlight } from "./compiled.js";
import { DrawnValues, setDraw } from "./draw.js";
import { fastFlight } from "./fast-flight.js";
import { FastOutcome } from "./outcome.js";
import { recordSize } from "./sizes.js";
import type { FastWork } from "./work.js";

/** Everything that a flight leaves behind. */
function leftBy(fly: typeof fastFlight, work: FastWork, draw: number): unknown {
  const normals = new Float64Array(drawSize);
  const drawn = new DrawnValues();
  drawNormals(7, draw, normals);
  drawnValues(usualSpread, normals, drawn);
  setDraw(work, drawn);
  work.records.fill(0);
  const out = fly(work, drawn.totalImpulse, drawn.burnTime, drawTolerance, new FastOutcome());
  return { ...out, records: work.records.slice(0, out.recordCount * recordSize) };
}

const plans = {
  "pitching, no wind": fastWork(flightD),
  "pitching, wind": fastWork(flightE),
  "pitching, winds aloft": fastWork({ ...flightE, wind: veeringWind }),
  aligned: fastWork(flightF, { model: "aligned" }),
  "never handed over": fastWork(flightE, { handOver: false }),
  "too weak to lift": fastWork({ ...flightD, rocket: { ...flightD.rocket, mass: 100 * flightD.rocket.mass } }),
};

test("CompiledFlight flies what fastFlight() flies, to the bit, whatever it flew before", () => {
  const kernel = new CompiledFlight();
  const inKernel: typeof fastFlight = (...flight) => kernel.fly(...flight);
  for (let draw = 0; draw < 60; draw++)
    for (const [name, work] of Object.entries(plans)) {
      const plain = leftBy(fastFlight, work, draw);
      expect(leftBy(inKernel, work, draw), `${name}, draw ${draw}`).toEqual(plain);
    }
});

afterEach(() => {
  vi.unstubAllGlobals();
  vi.resetModules();
});

test("compiledFlight() flies in JavaScript where nothing may be compiled", async () => {
  const work = plans["pitching, wind"];
  const here = leftBy(compiledFlight, work, 3);
  vi.resetModules();
  const compile = vi.fn(() => {
    throw new Error("not allowed here");
  });
  vi.stubGlobal("WebAssembly", { Module: compile });
  const other = await import("./compiled.js");
  expect(leftBy(other.compiledFlight, work, 3)).toEqual(here);
  expect(leftBy(other.compiledFlight, work, 3)).toEqual(here);
  expect(compile).toHaveBeenCalledTimes(1);
});
