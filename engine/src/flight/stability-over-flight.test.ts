import { expect, test } from "vitest";
import { flightD, flightE, referenceInputs } from "../../reference/trajectories/inputs.js";
import { fly } from "./fly.js";
import { leastDamping, leastMargin, marginOverMach, mostMargin, stabilityOverFlight } from "./stability-over-flight.js";

const options = { tolerance: 1e-8, compressibility: false, bodyLift: false };

/** Check values of the pitching flight: at 1.225 kg/m³, balance 0.9898244179 m and 0.20 kg m². */
const checked = { cp: 1.221847432, stiffnessPerPressure: 84.11481267 / (0.5 * 1.225 * 100 * 100) };

test("stabilityOverFlight() has the closed forms of frequency and damping at every moment", () => {
  const flight = fly(flightD, options);
  const { time, balance, cp, margin, frequency, dampingRatio, mass } = stabilityOverFlight(flight, { rows: 40 });
  expect(time).toHaveLength(40);
  expect(time[0]).toBe(flight.events.guideExit!.time);
  expect(time[39]).toBe(flight.events.apogee!.time);
  for (let i = 0; i < 40; i++) {
    expect(cp[i]).toBeCloseTo(checked.cp, 8);
    expect(margin[i]).toBeCloseTo((cp[i]! - balance[i]!) / 0.066, 12);
    const now = flight.at(time[i]!);
    const { density } = flight.model.airAt(now.position[2]);
    const spent = (1.4 - mass[i]!) / 0.25;
    const motor = 0.5 - 0.25 * spent;
    // airframe 0.17 kg m² about 0.88 m; the motor a cylinder 0.25 m long, 38 mm wide, its middle at 1.385 m
    const apart = 1.385 - 0.88;
    const inertia = 0.17 + motor * (0.25 ** 2 / 12 + 0.038 ** 2 / 16 + (0.9 / (0.9 + motor)) * apart ** 2);
    const pressure = 0.5 * density * now.airspeed ** 2;
    // the stiffness per pressure grows with the margin
    const stiffness =
      pressure * checked.stiffnessPerPressure * ((checked.cp - balance[i]!) / (checked.cp - 0.9898244179));
    expect(frequency[i]! / Math.sqrt(stiffness / inertia)).toBeCloseTo(1, 7);
    const area = (Math.PI * 0.066 ** 2) / 4;
    const arms = 2 * (0.139447968 - balance[i]!) ** 2 + 15.30045687 * (1.363333333 - balance[i]!) ** 2;
    const damping = (pressure / now.airspeed) * area * arms;
    if (time[i]! > 1.75) expect(dampingRatio[i]! / (damping / (2 * Math.sqrt(stiffness * inertia)))).toBeCloseTo(1, 7);
    else expect(dampingRatio[i]!).toBeGreaterThan(damping / (2 * Math.sqrt(stiffness * inertia)));
  }
});

test("stabilityOverFlight() names over-stable and under-damped where they are worst", () => {
  const flight = fly(flightE, options);
  const { margin, dampingRatio, findings, time } = stabilityOverFlight(flight);
  const over = findings.find(({ code }) => code === "over-stable");
  expect(over?.value).toBe(Math.max(...margin));
  expect(over?.value).toBeGreaterThan(mostMargin);
  expect(time).toContain(over?.time);
  // a heavy nose and tail: the same fins swing them slower and die out later
  const slow = { ...flightE, rocket: { ...flightE.rocket, inertia: 0.6 } };
  const sluggish = stabilityOverFlight(fly(slow, options)).findings.find(({ code }) => code === "under-damped");
  expect(Math.min(...dampingRatio)).toBeGreaterThan(leastDamping);
  expect(findings.map(({ code }) => code)).toEqual(["over-stable"]);
  expect(sluggish?.value).toBeLessThan(leastDamping);
});

/** Reference flight (d), its airframe's balance point farther aft. */
const tailHeavy = (by: number) => ({ ...flightD, rocket: { ...flightD.rocket, balance: flightD.rocket.balance + by } });

test("stabilityOverFlight() names unstable where the centre of pressure lies ahead of the balance point, from when to when", () => {
  const never = stabilityOverFlight(fly(tailHeavy(0.45), options));
  const [all, ...others] = never.findings;
  expect(Math.max(...never.margin)).toBeLessThan(0);
  expect(all).toMatchObject({ code: "unstable", limit: 0, value: Math.min(...never.margin) });
  expect([all?.from, all?.to]).toEqual([never.time[0], never.time.at(-1)]);
  expect(others).toEqual([]);
  // the burning motor moves the balance point forward, over the centre of pressure, which the whole flight (no compressibility) keeps
  const atFirst = stabilityOverFlight(fly(tailHeavy(0.26), options));
  const crossed = atFirst.margin.findIndex((margin) => margin > 0);
  const unstable = atFirst.findings.find(({ code }) => code === "unstable");
  expect(crossed).toBeGreaterThan(0);
  expect(unstable?.from).toBe(atFirst.time[0]);
  expect(unstable?.to).toBeGreaterThan(atFirst.time[crossed - 1]!);
  expect(unstable?.to).toBeLessThan(atFirst.time[crossed]!);
  expect(atFirst.findings.map(({ code }) => code)).not.toContain("low-margin");
});

test("stabilityOverFlight() names a margin below the least that is asked for", () => {
  const flight = fly(tailHeavy(0.18), options);
  const { margin, findings } = stabilityOverFlight(flight);
  const low = findings.find(({ code }) => code === "low-margin");
  expect(low).toMatchObject({ value: Math.min(...margin), limit: leastMargin });
  expect(low?.value).toBeGreaterThan(0);
  expect(low?.value).toBeLessThan(leastMargin);
  const codes = (least: number | null) => stabilityOverFlight(flight, { least }).findings.map(({ code }) => code);
  expect(codes(Math.min(...margin) - 0.01)).not.toContain("low-margin");
  expect(codes(null)).not.toContain("low-margin");
});

test("stabilityOverFlight() tells the angle at the guide's end in the mean wind, and with a gust square across", () => {
  const flight = fly(flightD, options);
  const exit = flight.events.guideExit!;
  const wind = flight.model.windAt(exit.position[2])[0];
  const { guideExitAngle } = stabilityOverFlight(flight, { gust: 3 });
  expect(guideExitAngle?.mean).toBeCloseTo(Math.atan(wind / exit.velocity[2]), 12);
  expect(guideExitAngle?.highest).toBeCloseTo(Math.atan((wind + 3) / exit.velocity[2]), 12);
  const stayed = fly({ ...referenceInputs, rocket: { ...referenceInputs.rocket, mass: 50 } }, options);
  expect(stabilityOverFlight(stayed)).toMatchObject({ guideExitAngle: null, findings: [] });
});

test("stabilityOverFlight() begins at the angle that the wind makes as the rocket comes free", () => {
  const { angleOfAttack, guideExitAngle } = stabilityOverFlight(fly(flightD, options));
  expect(guideExitAngle?.mean).toBeGreaterThan(0.1);
  expect(angleOfAttack[0]).toBeCloseTo(guideExitAngle!.mean, 6);
});

test("marginOverMach() grows as the propellant burns and follows the centre of pressure", () => {
  const { model } = fly(flightD, { tolerance: 1e-6 });
  const { loaded, empty } = marginOverMach(model, [0, 0.5, 1.5]);
  for (const i of [0, 1, 2]) expect(empty[i]!).toBeGreaterThan(loaded[i]!);
  // (0.9 kg at 0.88 m and 0.5 kg at 1.385 m)
  const balance = (0.9 * 0.88 + 0.5 * 1.385) / 1.4;
  expect(loaded[0]).toBeCloseTo((checked.cp - balance) / 0.066, 6);
});
