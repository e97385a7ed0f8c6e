import fc from "fast-check";
import { expect, test } from "vitest";
import { exampleRocket, noBallast } from "./example-rocket.js";
import { airframeWithBallast, loadedAt } from "./mass.js";
import { withoutMotor } from "./without-motor.js";

const motor = { length: 0.25, diameter: 0.038, aftAt: 1.51 };

test("airframeWithBallast() without ballast is the airframe", () => {
  expect(airframeWithBallast(exampleRocket, noBallast)).toEqual({ mass: 0.9, balance: 0.88, inertia: 0.17 });
});

test("airframeWithBallast() adds the reduced mass's moment (closed form)", () => {
  const { mass, balance, inertia } = airframeWithBallast(exampleRocket, { mass: 0.1, at: 0.18 });
  expect(mass).toBeCloseTo(1, 12);
  expect(balance).toBeCloseTo(0.81, 12);
  expect(inertia).toBeCloseTo(0.17 + ((0.9 * 0.1) / 1) * 0.7 ** 2, 12);
});

test("loadedAt() is the statement of the pitching flight, term by term", () => {
  const airframe = airframeWithBallast(exampleRocket, noBallast);
  const { mass, balance, inertia } = loadedAt(airframe, motor, 0.5);
  const xm = 1.51 - 0.125;
  const xg = (0.9 * 0.88 + 0.5 * xm) / 1.4;
  expect(mass).toBeCloseTo(1.4, 12);
  expect(balance).toBeCloseTo(xg, 12);
  const it = 0.17 + 0.9 * (0.88 - xg) ** 2 + 0.5 * (0.25 ** 2 / 12 + 0.019 ** 2 / 4) + 0.5 * (xm - xg) ** 2;
  expect(inertia).toBeCloseTo(it, 12);
});

test("loadedAt() moves the balance forward as propellant burns", () => {
  const airframe = airframeWithBallast(exampleRocket, noBallast);
  const balances = [0.5, 0.4, 0.3, 0.25].map((mass) => loadedAt(airframe, motor, mass).balance);
  for (let i = 1; i < balances.length; i++) expect(balances[i]).toBeLessThan(balances[i - 1] ?? 0);
});

test("withoutMotor() undoes loadedAt()", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 5, noNaN: true }),
      fc.double({ min: 0, max: 1.5, noNaN: true }),
      (mass, balance) => {
        const loaded = loadedAt({ mass, balance, inertia: 0.1 }, motor, 0.5);
        const back = withoutMotor({
          massReady: loaded.mass,
          balanceReady: loaded.balance,
          motor: { loadedMass: 0.5, length: motor.length, aftAt: motor.aftAt },
        });
        expect(back.mass).toBeCloseTo(mass, 9);
        expect(back.balance).toBeCloseTo(balance, 9);
      },
    ),
  );
});

test("withoutMotor() refuses a rocket that is not heavier than its motor, and says so", () => {
  const ready = { massReady: 0.5, balanceReady: 1, motor: { loadedMass: 0.5, length: 0.2, aftAt: 1.5 } };
  expect(() => withoutMotor(ready)).toThrow("rocket.massReady: 0.5 found; > 0.5 kg accepted (mass-not-above-motor)");
});
