import { expect, test } from "vitest";
import { referenceInputs, windFrom } from "../../reference/trajectories/inputs.js";
import { canopyDragArea, descentSpeed, fillTime } from "../packing/canopy.js";
import type { Canopy, Recovery } from "../packing/recovery.js";
import { type Descent, descend } from "./descent.js";
import { fly } from "./fly.js";
import type { FlightInputs } from "./inputs.js";
import { integrate } from "./integrate.js";
import type { FlightResult } from "./result.js";

const main: Canopy = { shape: "flat circular", diameter: 1 };
const drogue: Canopy = { shape: "conical", diameter: 0.3 };
const recovery: Recovery = { motorCharge: "primary", lineStretch: 0.5, main: { canopy: main } };
const dual: Recovery = { ...recovery, drogue: { canopy: drogue }, main: { canopy: main, opensAt: 150 } };
const spentMass = 0.9 + 0.25;

function opened(inputs: FlightInputs, after: number): { flight: FlightResult; descent: Descent } {
  const flight = fly(inputs, { tolerance: 1e-8 });
  return { flight, descent: descend(flight.model, flight.at(flight.events.apogee!.time + after), 1e-8) };
}

/** Steady speed under canopy and tube, in the air at the pad. */
function steady(flight: FlightResult, canopies: readonly Canopy[]): number {
  const { model } = flight;
  const area = canopies.reduce((sum, c) => sum + canopyDragArea(c), model.drag(0.05, 1e6, false) * model.area);
  return Math.sqrt((2 * spentMass * model.gravityAt(0)) / (model.airAt(0).density * area));
}

test("descend() lands at the steady speed of weight against drag", () => {
  const { flight, descent } = opened({ ...referenceInputs, recovery }, 0.5);
  const { landing, openings } = descent;
  expect(openings.map((o) => o.which)).toEqual(["main"]);
  // air thickens on the way down: the speed lags the steady one by a part in ten thousand
  expect(Math.abs(landing!.descentSpeed / steady(flight, [main]) - 1)).toBeLessThan(5e-4);
  // the tube's drag is small beside the canopy's
  const bare = descentSpeed({
    mass: spentMass,
    density: flight.model.airAt(0).density,
    canopy: main,
    gravity: flight.model.gravityAt(0),
  });
  expect(Math.abs(landing!.descentSpeed / bare - 1)).toBeLessThan(0.01);
  expect(landing!.groundSpeed).toBeCloseTo(landing!.descentSpeed, 9);
  expect(landing!.energy).toBeCloseTo(0.5 * spentMass * landing!.groundSpeed ** 2, 9);
  expect(landing!.position[2]).toBeCloseTo(0, 6);
});

test("descend() opens the drogue first and the main at its height", () => {
  const { flight, descent } = opened({ ...referenceInputs, recovery: dual }, 0.5);
  const [first, second] = descent.openings;
  expect([first!.which, second!.which]).toEqual(["drogue", "main"]);
  expect(first!.time).toBe(flight.events.apogee!.time + 0.5);
  expect(second!.height).toBeCloseTo(150, 6);
  // before the main opens it falls at the drogue's steady speed, in the air at 150 m
  const { model } = flight;
  const area = canopyDragArea(drogue) + model.drag(0.05, 1e6, false) * model.area;
  const under = Math.sqrt((2 * spentMass * model.gravityAt(150)) / (model.airAt(150).density * area));
  expect(Math.abs(second!.airspeed / under - 1)).toBeLessThan(2e-3);
  // both stay open
  expect(Math.abs(descent.landing!.descentSpeed / steady(flight, [drogue, main]) - 1)).toBeLessThan(5e-4);
  for (const { which, fill, airspeed, height } of descent.openings)
    expect(fill).toBe(fillTime(which === "main" ? main : drogue, airspeed, model.gravityAt(height)));
});

test("descend() opens both at once where the first opening is already below the main's height", () => {
  const low = { ...dual, main: { canopy: main, opensAt: 5000 } };
  const { descent, flight } = opened({ ...referenceInputs, recovery: low }, 0.5);
  expect(descent.openings.map((o) => [o.which, o.time])).toEqual([
    ["drogue", flight.events.apogee!.time + 0.5],
    ["main", flight.events.apogee!.time + 0.5],
  ]);
});

test("descend() drifts with the wind, and lands with its speed at the ground", () => {
  const { flight, descent } = opened({ ...referenceInputs, wind: windFrom(5, 270), recovery }, 0.5);
  const { model } = flight;
  const start = flight.at(flight.events.apogee!.time + 0.5);
  const landing = descent.landing!;
  // a canopy carried along: the wind's way over the time at each height, at the steady speed there
  const area = canopyDragArea(main) + model.drag(0.05, 1e6, false) * model.area;
  const drift = integrate(
    (_, y, rates) => {
      const z = Math.max(y[1]!, 0);
      rates[0] = model.windAt(z)[0];
      rates[1] = -Math.sqrt((2 * spentMass * model.gravityAt(z)) / (model.airAt(z).density * area));
    },
    Float64Array.of(0, start.position[2]),
    0,
    2000,
    {
      tolerance: 1e-8,
      scales: [100, 100],
      events: [{ name: "ground", value: (_, y) => y[1]!, direction: -1, stops: true }],
    },
  ).state[0]!;
  // some metres while the canopy fills and takes up the wind
  expect(Math.abs(landing.position[0] - start.position[0] - drift)).toBeLessThan(0.02 * drift);
  expect(drift).toBeGreaterThan(500);
  expect(Math.abs(landing.position[1])).toBeLessThan(1e-6);
  expect(landing.groundSpeed).toBeGreaterThan(landing.descentSpeed);
});

test("descend() slows an opening down without a jump, and never gains energy beyond what height and wind give", () => {
  const { flight, descent } = opened({ ...referenceInputs, recovery }, 4);
  const start = flight.at(flight.events.apogee!.time + 4);
  const landing = descent.landing!;
  expect(landing.time).toBeGreaterThan(start.time);
  expect(landing.energy).toBeLessThan(0.5 * spentMass * start.airspeed ** 2 + spentMass * 9.81 * start.position[2]);
  // longer in the air than an unopened fall
  expect(landing.time).toBeGreaterThan(flight.events.landing!.time);
});

test("descend() opened just above the ground lands before the canopy is full", () => {
  const flight = fly({ ...referenceInputs, recovery }, { tolerance: 1e-8 });
  const ground = flight.events.landing!;
  const late = descend(flight.model, flight.at(ground.time - 0.02), 1e-8);
  expect(late.landing!.time - (ground.time - 0.02)).toBeLessThan(late.openings[0]!.fill);
  expect(late.landing!.descentSpeed / -ground.velocity[2]).toBeGreaterThan(0.9);
});
