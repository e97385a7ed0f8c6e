import { expect, test } from "vitest";
import { fly } from "../../src/flight/fly.js";
import type { FlightInputs } from "../../src/index.js";
import { referenceInputs, referenceRocket } from "../trajectories/inputs.js";

const g = 9.80665;
const degree = Math.PI / 180;

/** Next to no air, and a guide that leans. */
const inputs: FlightInputs = {
  ...referenceInputs,
  air: { elevation: 0, latitude: 45 * degree, pressure: 1e-12 },
  guide: { travel: 1.5, tilt: 7 * degree, toward: 60 * degree },
  rocket: { ...referenceRocket, drag: { from: "constant", cd: 0, scale: 1 } },
};

function thrown(of: FlightInputs) {
  const flight = fly(of, { model: "rigid", gravity: g, tolerance: 1e-12 });
  const start = flight.at(2);
  const { apogee, landing } = flight.events;
  if (!apogee || !landing) throw new Error("an event is missing");
  return { flight, start, apogee, landing };
}

test("fly(): a rigid body thrown in a vacuum flies the parabola", () => {
  const { start, apogee, landing } = thrown(inputs);
  const [vx, vy, vz] = start.velocity;
  const rise = vz / g;
  const top = start.position[2] + (vz * vz) / (2 * g);
  expect(apogee.time - start.time).toBeCloseTo(rise, 8);
  expect(apogee.position[2] / top).toBeCloseTo(1, 9);
  expect(apogee.position[0]).toBeCloseTo(start.position[0] + vx * rise, 6);
  expect(apogee.position[1]).toBeCloseTo(start.position[1] + vy * rise, 6);
  const fall = Math.sqrt((2 * top) / g);
  expect(landing.time - apogee.time).toBeCloseTo(fall, 7);
  expect(landing.position[0]).toBeCloseTo(start.position[0] + vx * (rise + fall), 5);
  // nothing turned it
  const lean = Math.sin(7 * degree);
  const guide = [lean * Math.sin(60 * degree), lean * Math.cos(60 * degree), Math.cos(7 * degree)];
  expect(Math.hypot(...start.axis.map((along, i) => along - guide[i]!))).toBeLessThan(1e-12);
});

test("fly(): a body that tumbles in a vacuum, its thrust off the axis, still flies the parabola and keeps its turn", () => {
  const mount = { ...inputs.rocket.mount, thrustLine: { angle: 0, offset: 0.002, toward: 90 * degree } };
  const { flight, start, apogee } = thrown({ ...inputs, rocket: { ...inputs.rocket, mount } });
  const [vx, , vz] = start.velocity;
  expect(apogee.time - start.time).toBeCloseTo(vz / g, 8);
  expect(apogee.position[0]).toBeCloseTo(start.position[0] + (vx * vz) / g, 6);
  // the axis goes round at an even rate in one plane: equal angles in equal times
  const angle = (from: number, to: number) => {
    const [a, b] = [flight.at(from).axis, flight.at(to).axis];
    return Math.acos(a[0] * b[0] + a[1] * b[1] + a[2] * b[2]);
  };
  const first = angle(2, 2.05);
  expect(first).toBeGreaterThan(1e-3);
  expect(angle(4, 4.05)).toBeCloseTo(first, 7);
  expect(angle(6, 6.05)).toBeCloseTo(first, 7);
});
