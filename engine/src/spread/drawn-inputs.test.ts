import { expect, test } from "vitest";
import { flightE } from "../../reference/trajectories/inputs.js";
import { veeringWind } from "../../test/fast.js";
import { usualSpread } from "../../test/plan.js";
import { padTemperature } from "../air/at-field.js";
import { windAt } from "../wind/wind-at.js";
import { drawnInputs, inputsWith } from "./drawn-inputs.js";
import { noSpread, varies } from "./drawn-values.js";
import { type DrawnInput, flightInputsDrawn } from "./draws.js";

const degree = Math.PI / 180;

/** Normal values that are zero but for one input. */
function only(name: DrawnInput, z: number): Float64Array {
  const values = new Float64Array(flightInputsDrawn.length);
  values[flightInputsDrawn.indexOf(name)] = z;
  return values;
}

const moved = (name: DrawnInput, z = 1, inputs = flightE) => inputsWith(inputs, usualSpread, only(name, z));

test("inputsWith() at zero leaves the flight as planned", () => {
  const same = inputsWith(flightE, usualSpread, new Float64Array(flightInputsDrawn.length));
  const { guide, wind, ...rest } = same;
  const { guide: plannedGuide, wind: plannedWind, ...planned } = flightE;
  expect(rest).toEqual(planned);
  expect(guide.tilt).toBeCloseTo(plannedGuide.tilt, 12);
  expect(Math.sin(guide.toward - plannedGuide.toward)).toBeCloseTo(0, 12);
  windAt(wind)(10).forEach((w, i) => {
    expect(w).toBeCloseTo(windAt(plannedWind)(10)[i]!, 12);
  });
});

test("inputsWith() moves each input by its own rule, and nothing else", () => {
  const { rocket, motor } = flightE;
  expect(moved("dragScale").rocket.drag.scale).toBeCloseTo(Math.exp(0.15), 12);
  expect(moved("mass").rocket.mass).toBeCloseTo(rocket.mass * Math.exp(0.01), 12);
  expect(moved("inertia").rocket.inertia).toBeCloseTo(rocket.inertia * Math.exp(0.05), 12);
  expect(moved("balance", -2).rocket.balance).toBeCloseTo(rocket.balance - 0.01, 12);
  expect(moved("mass").motor).toEqual(motor);

  const stronger = moved("totalImpulse").motor;
  expect(stronger.thrust.times).toEqual(motor.thrust.times);
  expect(stronger.thrust.thrusts[2]).toBeCloseTo(380 * Math.exp(0.03), 9);
  expect(stronger.propellantMass).toBe(motor.propellantMass);

  // longer at constant impulse
  const longer = moved("burnTime").motor.thrust;
  expect(longer.times[7]).toBeCloseTo(1.75 * Math.exp(0.03), 12);
  expect(longer.thrusts[2]).toBeCloseTo(380 * Math.exp(-0.03), 9);
});

test("inputsWith() turns, scales and shifts the wind, of either kind", () => {
  const power = windAt(flightE.wind)(10);
  const speed = Math.hypot(power[0], power[1]);
  const blowing = windAt(moved("windSpeed").wind)(10);
  expect(Math.hypot(blowing[0], blowing[1])).toBeCloseTo(speed * Math.exp(0.2), 12);

  // from 240 to 255 degrees
  const turned = windAt(moved("windFrom").wind)(10);
  expect(turned[0]).toBeCloseTo(-speed * Math.sin(255 * degree), 12);
  expect(turned[1]).toBeCloseTo(-speed * Math.cos(255 * degree), 12);

  expect(windAt(moved("windFloorEast").wind)(10)[0]).toBeCloseTo(power[0] + 0.7, 12);
  expect(windAt(moved("windFloorNorth", -1).wind)(10)[1]).toBeCloseTo(power[1] - 0.7, 12);
  expect(moved("windExponent").wind).toMatchObject({ exponent: 1 / 7 + 0.05 });
  // an exponent never falls below zero
  expect(moved("windExponent", -9).wind).toMatchObject({ exponent: 0 });

  const aloft = { ...flightE, wind: veeringWind };
  const at = windAt(veeringWind)(300);
  const swung = windAt(moved("windFrom", 1, aloft).wind)(300);
  expect(Math.hypot(swung[0], swung[1])).toBeCloseTo(Math.hypot(at[0], at[1]), 12);
  const azimuth = (w: readonly number[]) => Math.atan2(w[0]!, w[1]!);
  expect(azimuth(swung) - azimuth(at)).toBeCloseTo(15 * degree, 12);
});

test("inputsWith() leans the guide about two axes, and warms the air", () => {
  const upright = { ...flightE, guide: { travel: 1.5, tilt: 0, toward: 0 } };
  const east = moved("guideTiltEast", 2, upright).guide;
  expect(east.tilt).toBeCloseTo(2 * degree, 12);
  expect(east.toward).toBeCloseTo(90 * degree, 12);
  const south = moved("guideTiltNorth", -1, upright).guide;
  expect(south.tilt).toBeCloseTo(degree, 12);
  expect(Math.abs(south.toward)).toBeCloseTo(180 * degree, 12);
  expect(padTemperature(moved("temperature").air)).toBeCloseTo(padTemperature(flightE.air) + 2, 9);
});

test("drawnInputs() depends on seed and number, and moves nothing without spread", () => {
  expect(drawnInputs(flightE, usualSpread, 1, 5)).toEqual(drawnInputs(flightE, usualSpread, 1, 5));
  expect(drawnInputs(flightE, usualSpread, 1, 6)).not.toEqual(drawnInputs(flightE, usualSpread, 1, 5));
  expect(drawnInputs(flightE, noSpread, 1, 5).rocket).toEqual(flightE.rocket);
});

test("varies() tells whether anything does", () => {
  expect(varies(noSpread)).toBe(false);
  expect(varies({ ...noSpread, balance: 1e-3 })).toBe(true);
  expect(varies({ ...noSpread, delay: { seconds: 0, fraction: 0.1 } })).toBe(true);
  expect(varies({ ...noSpread, cutDepth: 1e-4 })).toBe(true);
});
