import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, expect, test } from "vitest";
import { compile, compilerName, prepareC } from "../bench/c-side.js";
import { furthestApart } from "../bench/means.js";
import { benchSpec } from "../bench/reference-plan.js";
import { type EnsembleSpec, prepareEnsemble } from "../src/spread/ensemble.js";

const folder = mkdtempSync(join(tmpdir(), "c-agreement-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const draws = 320;

/** Both sides round differently in the last digit (one fuses products and sums); steps and roots carry that up. */
const roundingGrown = 1e-9;

function variants(): readonly (readonly [name: string, spec: EnsembleSpec])[] {
  const { spec: pitching } = benchSpec("pitching");
  const { spec: aligned } = benchSpec("aligned");
  const { inputs, opening } = pitching;
  return [
    ["pitching", pitching],
    ["aligned", aligned],
    [
      "winds aloft, ballast, a leaning guide, another seed",
      {
        ...pitching,
        seed: -7,
        inputs: {
          ...inputs,
          wind: { kind: "aloft", heights: [0, 100, 800, 2000], east: [2, 4, 6, 3], north: [0, 1, -2, -5] },
          ballast: { mass: 0.05, at: 0.2 },
          guide: { travel: 1.5, tilt: 0.08, toward: 4 },
        },
      },
    ],
    [
      "drag that does not depend on height, delay counted from ignition, electronics, a canopy slow to fill",
      {
        ...pitching,
        inputs: { ...inputs, rocket: { ...inputs.rocket, drag: { from: "constant", cd: 0.55, scale: 1 } } },
        opening: { ...opening, clock: "ignition", electronicsDelay: 1, fillDistance: 80, samples: 3 },
      },
    ],
  ];
}

test.skipIf(compilerName() === null)("prepareEnsemble() agrees with the same algorithm in C (needs gcc)", () => {
  const source = fileURLToPath(new URL("../bench/ensemble.c", import.meta.url));
  const program = compile(source, folder);
  const cases = variants();
  expect(cases).toHaveLength(4);
  for (const [name, spec] of cases) {
    const { settings, samples } = spec.opening;
    const other = prepareC(program, spec, folder)(0, draws, 1);
    const chunk = prepareEnsemble(spec)(0, draws);
    expect(furthestApart(chunk, settings.length, samples, other), name).toBeLessThan(roundingGrown);
  }
});

test("furthestApart() sees one odd of one setting that is off, and a missing number", () => {
  const { spec } = benchSpec("aligned");
  const chunk = prepareEnsemble({ ...spec, opening: { ...spec.opening, samples: 1 } })(0, 16);
  const means = {
    flights: columnMeansOf(chunk.flights, 8),
    judged: columnMeansOf(chunk.judged, 40),
    samples: columnMeansOf(chunk.samples, 15),
  };
  const at = means.judged.findIndex((odds) => odds > 0.1);
  const moved = (by: number) => ({ ...means, judged: means.judged.map((odds, i) => (i === at ? odds * by : odds)) });
  expect(furthestApart(chunk, 5, 1, moved(1))).toBeLessThan(1e-12);
  expect(furthestApart(chunk, 5, 1, moved(1 + 1e-6))).toBeCloseTo(1e-6, 12);
  expect(furthestApart(chunk, 5, 1, moved(Number.NaN))).toBe(Number.POSITIVE_INFINITY);
});

function columnMeansOf(values: Float64Array, columns: number): number[] {
  return Array.from({ length: columns }, (_, c) => {
    const column = values.filter((value, i) => i % columns === c && !Number.isNaN(value));
    return column.length > 0 ? column.reduce((a, b) => a + b, 0) / column.length : 0;
  });
}
