import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { loadPlan, planToEngine } from "@delaywright/documents";
import { type DecisionInputs, decide, drawnInputs, type EnsembleSpec, fly, prepareEnsemble } from "@delaywright/engine";
import { expect, test } from "vitest";
import { diskFiles } from "../src/io/files.js";

const examples = [
  "worked-example",
  "between-two-settings",
  "no-good-setting",
  "spoiled-by-lean",
  "after-an-over-cut",
  "back-up-charge",
  "winds-aloft",
];

const pathOf = (example: string, file: string): string =>
  fileURLToPath(new URL(`../examples/${example}/${file}`, import.meta.url));

async function inputsOf(example: string): Promise<DecisionInputs> {
  const loaded = await loadPlan(pathOf(example, "plan.json"), diskFiles);
  if (loaded.parts === undefined) throw new Error(JSON.stringify(loaded.issues));
  const made = planToEngine(loaded.parts);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made.inputs;
}

test.each(examples)(
  "fly(): the hand-over moves coast by at most 0.04 s and the airspeed at the top by 0.5 m/s (%s)",
  async (example) => {
    const inputs = await inputsOf(example);
    const top = (handOver: boolean) => {
      const { apogee, burnout } = fly(inputs, { handOver, tolerance: 1e-8 }).events;
      if (apogee === null || burnout === null) throw new Error("no apogee");
      return { coast: apogee.time - burnout.time, airspeed: apogee.airspeed };
    };
    const [short, whole] = [top(true), top(false)];
    expect(Math.abs(short.coast - whole.coast)).toBeLessThan(0.04);
    expect(Math.abs(short.airspeed - whole.airspeed)).toBeLessThan(0.5);
  },
);

test.each(examples)(
  "prepareEnsemble(): draws are within 1e-4 of the tight flight, openings within 0.05 m/s (%s)",
  async (example) => {
    const inputs = await inputsOf(example);
    let spec: EnsembleSpec | undefined;
    await decide(inputs, {
      draws: 16,
      run: async (asked, draws) => {
        spec ??= asked;
        return prepareEnsemble(asked)(0, draws);
      },
    });
    if (spec === undefined) throw new Error("no ensemble was asked for");
    const draws = 12;
    const opening = { ...spec.opening, samples: 2 };
    const chunk = prepareEnsemble({ ...spec, opening })(0, draws);
    const perDraw = opening.settings.length * opening.samples * 3;
    for (let draw = 0; draw < draws; draw++) {
      const tight = fly(drawnInputs(inputs, inputs.spread, spec.seed, draw), { tolerance: 1e-9 });
      const { apogee } = tight.events;
      if (apogee === null) throw new Error("no apogee");
      const [time = 0, height = 0] = chunk.flights.subarray(draw * 8 + 1, draw * 8 + 3);
      expect(Math.abs(time / apogee.time - 1), `draw ${draw}, time to the top`).toBeLessThan(1e-4);
      expect(Math.abs(height / apogee.position[2] - 1), `draw ${draw}, top`).toBeLessThan(1e-4);
      const samples = chunk.samples.subarray(draw * perDraw, (draw + 1) * perDraw);
      for (let k = 0; k < samples.length; k += 3) {
        const [airspeed = Number.NaN, , sinceApogee = 0] = samples.subarray(k, k + 3);
        if (Number.isNaN(airspeed)) continue;
        // the fast flight's own moment: its error in time is judged above
        const there = tight.at(time + sinceApogee).airspeed;
        expect(Math.abs(airspeed - there), `draw ${draw}, opening ${sinceApogee} s after the top`).toBeLessThan(0.05);
      }
    }
  },
);

/** Every recorded run of an example, added up: none is picked. */
function pooledRuns(example: string): BruteForce {
  const files = readdirSync(pathOf(example, "")).filter((name) => /^monte-carlo.*\.json$/.test(name));
  expect(files.length, "record one with: node scripts/monte-carlo/run.mjs EXAMPLE").toBeGreaterThan(0);
  const runs = files.map((name) => JSON.parse(readFileSync(pathOf(example, name), "utf8")) as BruteForce);
  const draws = runs.reduce((sum, run) => sum + run.draws, 0);
  expect(draws, "fewer tell too little").toBeGreaterThanOrEqual(100_000);
  const mean = (of: (run: BruteForce) => number): number =>
    runs.reduce((sum, run) => sum + of(run) * run.draws, 0) / draws;
  return {
    draws,
    settings: (runs[0] as BruteForce).settings.map(({ delay }, i) => ({
      delay,
      clean: mean((run) => run.settings[i]?.clean ?? Number.NaN),
      holds: mean((run) => run.settings[i]?.holds ?? Number.NaN),
    })),
  };
}

interface BruteForce {
  readonly draws: number;
  readonly settings: readonly { readonly delay: number; readonly clean: number; readonly holds: number }[];
}

test.each(examples)(
  "decide(): odds agree with plain random flights, 100,000 and more, within three standard errors (%s)",
  async (example) => {
    const brute = pooledRuns(example);
    const decision = await decide(await inputsOf(example), { draws: 10_000 });
    expect(decision.settings).toHaveLength(brute.settings.length);
    decision.settings.forEach((setting, i) => {
      const plain = brute.settings[i];
      if (plain === undefined) throw new Error("a setting is missing");
      expect(setting.delay).toBeCloseTo(plain.delay, 6);
      for (const [what, ours, own, theirs] of [
        ["clean", setting.odds.clean, setting.odds.error, plain.clean],
        ["holds", setting.odds.holds, setting.odds.holdsError, plain.holds],
      ] as const) {
        const p = Math.min(Math.max(ours, 1 / brute.draws), 1 - 1 / brute.draws);
        const error = Math.hypot(3 * Math.sqrt((p * (1 - p)) / brute.draws), own);
        expect(Math.abs(ours - theirs), `${what} at ${setting.delay} s`).toBeLessThan(error);
      }
    });
  },
);
