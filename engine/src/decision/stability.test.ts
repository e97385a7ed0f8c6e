import { expect, test } from "vitest";
import { flightD, flightE, referenceInputs } from "../../reference/trajectories/inputs.js";
import { fly } from "../flight/fly.js";
import { marginAt } from "../flight/margin-over-flight.js";
import { stabilityOf } from "./stability.js";

const options = { tolerance: 1e-8 };

test("stabilityOf() gives centre of pressure, balance and margin at guide exit and burnout", () => {
  const flight = fly(flightD, { ...options, compressibility: false });
  const { cp, guideExit, burnout } = stabilityOf(flight);
  // CP of the check values of the pitching flight; printed to ten digits
  expect(cp).toBeCloseTo(1.221847432, 8);
  // airframe 0.9 kg at 0.88 m; motor at 1.51 - 0.125 m, 0.5 kg less the propellant burned
  const balance = (spent: number) => {
    const motor = 0.5 - 0.25 * spent;
    return (0.9 * 0.88 + motor * 1.385) / (0.9 + motor);
  };
  // impulse spent: of the whole 505.75 N s, to guide exit 38.2, at burnout all but the tail
  const exitTime = flight.events.guideExit!.time;
  const atExit = (8 + (exitTime - 0.05) * (320 + 0.5 * 400 * (exitTime - 0.05))) / 505.75;
  expect(guideExit.balance).toBeCloseTo(balance(atExit), 9);
  const tail = 1.75 - 1.7240909;
  expect(burnout.balance).toBeCloseTo(balance(1 - (0.5 * 19 * tail) / 505.75), 7);
  for (const margin of [guideExit, burnout]) {
    expect(margin.calibres).toBeCloseTo((margin.cp - margin.balance) / 0.066, 12);
    expect(margin.ofLength).toBeCloseTo((margin.cp - margin.balance) / 1.5, 12);
  }
});

test("stabilityOf() moves the centre of pressure forward at the angle that the wind makes at guide exit", () => {
  const flight = fly(flightD, options);
  const { guideExit, guideExitAtAngle } = stabilityOf(flight);
  const exit = flight.events.guideExit!;
  const wind = flight.model.windAt(exit.position[2])[0];
  expect(guideExitAtAngle.angle).toBeCloseTo(Math.atan(wind / exit.velocity[2]), 12);
  expect(guideExitAtAngle.cp).toBeLessThan(guideExit.cp);
  expect(guideExitAtAngle.balance).toBe(guideExit.balance);
  const calm = stabilityOf(fly(referenceInputs, options));
  expect(calm.guideExitAtAngle.angle).toBeCloseTo(0, 6);
  expect(calm.guideExitAtAngle.cp).toBeCloseTo(calm.guideExit.cp, 9);
  const plain = stabilityOf(fly(flightE, { ...options, bodyLift: false }));
  expect(plain.guideExitAtAngle.cp).toBe(plain.guideExit.cp);
});

test("stabilityOf() judges a rocket that never left the guide as it stands", () => {
  const flight = fly({ ...referenceInputs, rocket: { ...referenceInputs.rocket, mass: 50 } }, options);
  const { guideExit, guideExitAtAngle, inFlight } = stabilityOf(flight);
  expect(guideExit.balance).toBeCloseTo((50 * 0.88 + 0.5 * 1.385) / 50.5, 12);
  expect(guideExitAtAngle.angle).toBe(0);
  expect(inFlight.least).toMatchObject(guideExit);
});

test("stabilityOf() finds the least and the most margin of a supersonic climb, as two thousand moments of it have them", () => {
  const { motor } = flightD;
  const thrust = { ...motor.thrust, thrusts: motor.thrust.thrusts.map((newtons) => 6 * newtons) };
  const flight = fly({ ...flightD, motor: { ...motor, thrust } }, { ...options, tolerance: 1e-6 });
  const { guideExit, burnout, inFlight } = stabilityOf(flight);
  const [from, to] = [flight.events.guideExit!.time, flight.events.apogee!.time];
  const all = Array.from({ length: 2000 }, (_, i) => from + (i / 1999) * (to - from)).map(
    (time) => marginAt(flight.model, time, flight.at(time).mach).calibres,
  );
  expect(flight.peaks().highestMach).toBeGreaterThan(1.5);
  // a twentieth of a calibre: half of what is shown
  expect(Math.abs(inFlight.least.calibres - Math.min(...all))).toBeLessThan(0.05);
  expect(Math.abs(inFlight.most.calibres - Math.max(...all))).toBeLessThan(0.05);
  const spread = (margins: readonly number[]) => Math.max(...margins) - Math.min(...margins);
  // guide exit and burnout alone miss half a calibre of it
  expect(spread(all)).toBeGreaterThan(0.5 + spread([guideExit.calibres, burnout.calibres]));
});
