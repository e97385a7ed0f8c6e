import { expect, test } from "vitest";
import { flightE, tableDrag } from "../../../reference/trajectories/inputs.js";
import { exampleRocket } from "../../rocket/example-rocket.js";
import { prepareFlight } from "../model.js";
import { resolveFlightOptions } from "../options.js";
import { attitudeAlong, noseAxis, sideAxes } from "./attitude.js";
import { rigidBody } from "./body.js";

const model = prepareFlight({ ...flightE, rocket: exampleRocket }, resolveFlightOptions({ model: "rigid" }));
const body = rigidBody(model);

test("rigidBody() reads air within 1e-9 and aerodynamics within 1e-5 of what they are", () => {
  for (const z of [-5, 0.3, 12, 777, 3333, 9_876]) {
    const row = body.air.locate(z);
    const { density, soundSpeed, viscosity } = model.airAt(z);
    expect(Math.abs(body.air.value(row, 0) / density - 1), `${z} m`).toBeLessThan(1e-9);
    expect(Math.abs(body.air.value(row, 1) * soundSpeed - 1)).toBeLessThan(1e-9);
    expect(body.air.value(row, 2)).toBeCloseTo(Math.log((density * soundSpeed) / viscosity), 9);
  }
  for (const mach of [0.013, 0.3, 0.62, 0.77]) {
    const row = body.aero.locate(mach);
    model.parts.forEach((part, i) => {
      expect(Math.abs(body.aero.value(row, 2 * i) / part.slopeAt(mach) - 1), `Mach ${mach}`).toBeLessThan(1e-5);
      expect(Math.abs(body.aero.value(row, 2 * i + 1) / part.cpAt(mach) - 1)).toBeLessThan(1e-5);
    });
  }
});

test("rigidBody() reads a built-up drag within 1e-3 at any height, and a given one as it is", () => {
  for (const thrusting of [true, false])
    for (const z of [0, 400, 2500, 7000])
      for (const mach of [0.031, 0.1, 0.33, 0.58, 0.74]) {
        const { density, soundSpeed, viscosity } = model.airAt(z);
        const perMach = (density * soundSpeed) / viscosity;
        const found = body.drag(mach, Math.log(perMach), mach * perMach, thrusting);
        expect(Math.abs(found / model.drag(mach, mach * perMach, thrusting) - 1), `${mach} at ${z} m`).toBeLessThan(
          1e-3,
        );
      }
  const given = prepareFlight({ ...flightE, rocket: { ...exampleRocket, drag: tableDrag } }, model.options);
  expect(rigidBody(given).drag(0.47, 16, 5e6, false)).toBe(given.drag(0.47, 5e6, false));
});

test("attitudeAlong() points the nose where it should, upright with y to the east and z to the north", () => {
  expect(noseAxis(attitudeAlong([0, 0, 1]))).toEqual([0, 0, 1]);
  const [east, north] = sideAxes(attitudeAlong([0, 0, 1]));
  expect(east).toEqual([1, 0, 0]);
  expect(north).toEqual([0, 1, 0]);
  for (const [e, n] of [
    [0.1, 0.2],
    [-0.7, 0.1],
    [0, -0.99],
  ] as const) {
    const axis = [e, n, Math.sqrt(1 - e * e - n * n)] as const;
    const q = attitudeAlong(axis);
    expect(Math.hypot(...q)).toBeCloseTo(1, 14);
    noseAxis(q).forEach((along, i) => {
      expect(along).toBeCloseTo(axis[i]!, 14);
    });
    // the shortest turn keeps what lies square to it: the sides lean no more than the nose
    for (const side of sideAxes(q)) expect(Math.abs(side[2])).toBeLessThanOrEqual(Math.hypot(e, n) + 1e-12);
  }
});
