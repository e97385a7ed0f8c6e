import { expect, test } from "vitest";
import { flightE, referenceInputs } from "../../reference/trajectories/inputs.js";
import { trajectoryColumns } from "./columns.js";
import { descend } from "./descent.js";
import { fly } from "./fly.js";
import { speedOf } from "./trajectory.js";

const flight = fly(flightE, { tolerance: 1e-7 });
const opens = flight.events.apogee!.time + 1;
const descent = descend(flight.model, flight.at(opens), 1e-7);

const names = ["time", "east", "north", "height", "speed", "airspeed", "mach", "angleOfAttack"] as const;

test("trajectoryColumns() unopened follows the flight from first motion to the ground", () => {
  const columns = trajectoryColumns(flight, null, null, 60);
  expect(columns.opening).toBeNull();
  for (const name of names) expect(columns[name]).toHaveLength(60);
  expect(columns.time[0]).toBeCloseTo(flight.events.liftOff!.time, 9);
  expect(columns.time[59]).toBe(flight.events.landing!.time);
  expect(columns.height[59]).toBeCloseTo(0, 4);
  columns.time.forEach((time, i) => {
    const now = flight.at(time);
    expect([columns.east[i], columns.north[i], columns.height[i]]).toEqual(now.position);
    expect(columns.speed[i]).toBe(speedOf(now.velocity));
    expect(columns.airspeed[i]).toBe(now.airspeed);
    expect(columns.mach[i]).toBe(now.mach);
    expect(columns.angleOfAttack[i]).toBe(now.angleOfAttack);
  });
});

test("trajectoryColumns() opened meets the opening, then follows the way down to its landing", () => {
  const columns = trajectoryColumns(flight, descent, opens, 60);
  const { opening } = columns;
  expect(opening).toBe(39);
  expect(columns.time[opening!]).toBe(opens);
  expect(columns.time[59]).toBe(descent.landing!.time);
  expect(columns.east[59]).toBeCloseTo(descent.landing!.position[0], 9);
  columns.time.forEach((time, i) => {
    if (i > 0) expect(time).toBeGreaterThan(columns.time[i - 1]!);
    const now = i > opening! ? descent.at(time) : flight.at(time);
    expect(columns.height[i]).toBe(now.position[2]);
    expect(columns.airspeed[i]).toBe(now.airspeed);
  });
});

test("trajectoryColumns() of a rocket that never moved has no rows, and all of it is plain data", () => {
  const still = fly({ ...referenceInputs, rocket: { ...referenceInputs.rocket, mass: 50 } });
  expect(trajectoryColumns(still, null, null, 60).time).toHaveLength(0);
  const columns = trajectoryColumns(flight, descent, opens, 12);
  expect(structuredClone(columns)).toEqual(columns);
});
