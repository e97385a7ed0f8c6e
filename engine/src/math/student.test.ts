import { describe, expect, test } from "vitest";
import { incompleteBeta, lnGamma } from "./beta.js";
import { studentCdf, studentDensity, studentQuantile } from "./student.js";
import { studentTable } from "./student-table.js";

const degreesTried = [1, 2, 3, 4, 7.5, 11, 30, 200, 2000];
const points = [-200, -30, -6, -2.5, -1, -0.3, -1e-4, 0, 1e-4, 0.2, 0.999, 1.001, 2, 4, 12, 77];

describe("lnGamma() and incompleteBeta()", () => {
  test("give factorials, and the square root of pi", () => {
    let factorial = 1;
    for (let n = 1; n <= 20; n++) {
      expect(Math.exp(lnGamma(n)) / factorial).toBeCloseTo(1, 12);
      factorial *= n;
    }
    expect(Math.exp(2 * lnGamma(0.5))).toBeCloseTo(Math.PI, 12);
  });

  test("give the polynomial of whole parameters: I_x(2, 3) = 6x² − 8x³ + 3x⁴", () => {
    for (const x of [0, 0.1, 0.33, 0.5, 0.8, 1])
      expect(incompleteBeta(x, 2, 3)).toBeCloseTo(6 * x ** 2 - 8 * x ** 3 + 3 * x ** 4, 13);
  });
});

describe("studentCdf()", () => {
  // closed forms by integration of the density (memory)
  test.each([
    [1, (t: number) => 0.5 + Math.atan(t) / Math.PI],
    [2, (t: number) => 0.5 + t / (2 * Math.SQRT2 * Math.sqrt(1 + t ** 2 / 2))],
    [4, (t: number) => 0.5 + (3 / 8) * (t / Math.sqrt(1 + t ** 2 / 4)) * (1 - t ** 2 / (1 + t ** 2 / 4) / 12)],
  ])("is the closed form for %d degrees", (degrees, closed) => {
    for (const t of points) expect(Math.abs(studentCdf(t, degrees) - closed(t))).toBeLessThan(1e-12);
  });

  test("gives the odds of the worked example: 11 degrees (check values 13)", () => {
    expect(studentCdf((9 - 9.97142857142857) / 0.7825556344, 11)).toBeCloseTo(0.120147192, 8);
  });

  test("has the density for its slope", () => {
    for (const degrees of degreesTried)
      for (const t of [-3, -0.5, 0.7, 2]) {
        const slope = (studentCdf(t + 1e-4, degrees) - studentCdf(t - 1e-4, degrees)) / 2e-4;
        expect(slope).toBeCloseTo(studentDensity(t, degrees), 7);
      }
  });

  test("takes what is no number and what has no end", () => {
    expect(studentCdf(Number.NaN, 3)).toBeNaN();
    expect([studentCdf(-Infinity, 3), studentCdf(Infinity, 3)]).toEqual([0, 1]);
  });
});

describe("studentQuantile()", () => {
  test("undoes studentCdf(), far out too", () => {
    for (const degrees of degreesTried)
      for (const p of [1e-12, 1e-6, 0.01, 0.05, 0.3, 0.5, 0.7, 0.95, 0.999, 1 - 1e-9])
        expect(Math.abs(studentCdf(studentQuantile(p, degrees), degrees) / p - 1)).toBeLessThan(1e-11);
  });

  test("is the closed form for 2 degrees: (2p − 1)/√(2p(1 − p))", () => {
    for (const p of [0.001, 0.05, 0.4, 0.9, 0.9999])
      expect(studentQuantile(p, 2) / ((2 * p - 1) / Math.sqrt(2 * p * (1 - p)))).toBeCloseTo(1, 11);
  });

  test("gives the 5 % and 95 % points of the worked example (check values 13)", () => {
    const at = (p: number): number => 9.97142857142857 + 0.7825556344 * studentQuantile(p, 11);
    expect(at(0.05)).toBeCloseTo(8.56604879, 7);
    expect(at(0.95)).toBeCloseTo(11.37680836, 7);
  });

  test("has no end at 0 and 1", () => {
    expect([studentQuantile(0, 5), studentQuantile(1, 5)]).toEqual([-Infinity, Infinity]);
    expect(studentQuantile(Number.NaN, 5)).toBeNaN();
  });
});

describe("studentTable()", () => {
  const bound = (degrees: number): number => (degrees > 200 ? 1e-7 : 1e-9);

  test("is studentCdf() within 1e-9, for 2000 degrees within 1e-7", () => {
    for (const degrees of degreesTried) {
      const { cdf } = studentTable(degrees);
      for (let t = -60; t <= 60; t += 0.0371)
        expect(Math.abs(cdf(t) - studentCdf(t, degrees))).toBeLessThan(bound(degrees));
      expect([cdf(-Infinity), cdf(Infinity)]).toEqual([0, 1]);
    }
  });

  test("has a quantile that its cdf undoes as exactly", () => {
    for (const degrees of degreesTried) {
      const { quantile } = studentTable(degrees);
      for (let p = 0.0005; p < 1; p += 0.0123)
        expect(Math.abs(studentCdf(quantile(p), degrees) - p)).toBeLessThan(bound(degrees));
    }
  });
});
