import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { loadPlan, memoryFiles, planToEngine } from "@delaywright/documents";
import {
  type DecisionInputs,
  decide,
  type EnsembleChunk,
  type EnsembleSpec,
  fly,
  prepareEnsemble,
  type TurningModel,
} from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import { drawnPlan } from "../../scripts/rigid-against-pitching/plans.mjs";

interface Mean {
  readonly mean: number;
  readonly error: number;
}

interface Against {
  readonly figures: Readonly<
    Record<"coast" | "top" | "airspeedAtTop" | "openingSpeed", Mean & { readonly median: number }>
  >;
  readonly atCut: Mean;
  readonly toCut: { readonly pitching: number; readonly rigid: number };
  readonly lost: Mean & { readonly tie: number };
  readonly holdsReached: { readonly pitching: boolean; readonly rigid: boolean };
}

interface Recorded {
  readonly seed: number;
  readonly draws: { readonly rigid: number };
  readonly plans: readonly {
    readonly plan: number;
    readonly nominal: { readonly coast: number; readonly top: number; readonly airspeedAtTop: number };
    readonly turbulent: Against;
    readonly calm: Against;
  }[];
}

const path = fileURLToPath(new URL("../../scripts/rigid-against-pitching/results.json", import.meta.url));
const recorded = JSON.parse(readFileSync(path, "utf8")) as Recorded;
const { plans, seed } = recorded;

/** The value below which a share of them lies, by size. */
function quantile(values: readonly number[], share: number): number {
  const sizes = values.map(Math.abs).sort((a, b) => a - b);
  return sizes[Math.min(sizes.length - 1, Math.floor(share * sizes.length))] ?? Number.NaN;
}

describe("a hundred plans flown by the rigid model and by the ensemble's", () => {
  test("bear out what docs/ensemble-against-rigid.md says of them", () => {
    expect(plans).toHaveLength(100);
    const of = (figure: keyof Against["figures"]) => plans.map(({ turbulent }) => turbulent.figures[figure].median);
    expect(quantile(of("coast"), 0.95)).toBeLessThan(0.035);
    expect(quantile(of("coast"), 1)).toBeLessThan(0.065);
    expect(quantile(of("top"), 0.95)).toBeLessThan(3.7);
    expect(quantile(of("airspeedAtTop"), 0.5)).toBeLessThan(0.3);
    expect(quantile(of("airspeedAtTop"), 0.95)).toBeLessThan(1);
    expect(quantile(of("openingSpeed"), 0.95)).toBeLessThan(1);
    const clean = plans.map(({ turbulent }) => turbulent.atCut.mean);
    expect(quantile(clean, 0.5)).toBeLessThan(0.008);
    expect(quantile(clean, 0.95)).toBeLessThan(0.061);
    expect(quantile(clean, 1)).toBeLessThan(0.08);
  });

  test("the delay to cut moves in none beyond the sampling error", () => {
    for (const { plan, turbulent, calm } of plans)
      for (const { lost } of [turbulent, calm]) {
        expect(lost.mean, `plan ${plan}`).toBeLessThanOrEqual(lost.tie);
        // by the pairs alone, whose error is finer
        expect(lost.mean, `plan ${plan}`).toBeLessThanOrEqual(Math.max(3 * lost.error, 0.004));
      }
  });
});

async function inputsOf(plan: number): Promise<DecisionInputs> {
  const loaded = await loadPlan("plan.json", memoryFiles(drawnPlan(seed, plan)));
  if (loaded.parts === undefined) throw new Error(JSON.stringify(loaded.issues));
  const made = planToEngine(loaded.parts);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made.inputs;
}

/** Some of them: the first, and those in which the models are furthest apart. */
const [first] = plans;
const furthest = [...plans].sort((a, b) => Math.abs(b.turbulent.atCut.mean) - Math.abs(a.turbulent.atCut.mean));
const again = [...new Set([first!, ...furthest.slice(0, 2)])];

test.each(again)("flown again they are as far apart as recorded: plan $plan", async ({ plan, nominal, turbulent }) => {
  const inputs = await inputsOf(plan);
  const top = (model: TurningModel) => {
    const { apogee, burnout } = fly(inputs, { model, tolerance: 1e-8 }).events;
    if (apogee === null || burnout === null) throw new Error("no apogee");
    return { coast: apogee.time - burnout.time, top: apogee.position[2], airspeedAtTop: apogee.airspeed };
  };
  const [quick, rigid] = [top("pitching"), top("rigid")];
  expect(Math.abs(rigid.coast - quick.coast - nominal.coast)).toBeLessThan(0.01);
  expect(Math.abs(rigid.top - quick.top - nominal.top)).toBeLessThan(0.5);
  expect(Math.abs(rigid.airspeedAtTop - quick.airspeedAtTop - nominal.airspeedAtTop)).toBeLessThan(0.15);

  let asked: EnsembleSpec | undefined;
  const draws = 32;
  await decide(inputs, {
    draws,
    seed,
    run: async (spec, from, to) => {
      asked ??= spec;
      return prepareEnsemble(spec)(from, to);
    },
  });
  if (asked === undefined) throw new Error("no ensemble was asked for");
  const at = asked.opening.settings.findIndex(({ delay }) => Math.abs(delay - turbulent.toCut.pitching) < 1e-3);
  expect(at).toBeGreaterThanOrEqual(0);
  const count = asked.opening.settings.length;
  const clean = ({ judged }: EnsembleChunk) =>
    Array.from({ length: draws }, (_, i) => judged[(i * count + at) * 8] ?? Number.NaN).reduce(
      (sum, odds) => sum + odds,
    ) / draws;
  const options = { ...asked.options, model: "rigid" as const };
  const apart = clean(prepareEnsemble({ ...asked, options })(0, draws)) - clean(prepareEnsemble(asked)(0, draws));
  const error = 3 * turbulent.atCut.error * Math.sqrt(recorded.draws.rigid / draws);
  expect(Math.abs(apart - turbulent.atCut.mean)).toBeLessThan(error + 0.01);
});
