import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { loadPlan, planToEngine } from "@delaywright/documents";
import type { DecisionInputs } from "@delaywright/engine";
import { diskFiles } from "../../cli/src/io/files.js";
import { randomOf } from "../../engine/test/random.js";
import { type Opening, season } from "../../engine/test/seasons/season.js";

/*
 * Many seasons of the examples' rockets: one part of a run, written as openings. See run.mjs.
 * Usage: node seasons.mjs SEASONS FLIGHTS DRAWS SEED BELIEVED OUT
 */

const examples = ["worked-example", "between-two-settings", "weather-window", "winds-aloft"];

async function planOf(example: string): Promise<DecisionInputs> {
  const loaded = await loadPlan(join("cli", "examples", example, "plan.json"), diskFiles);
  const made = loaded.parts && planToEngine(loaded.parts);
  if (made?.ok !== true) throw new Error(`cannot make a plan of ${example}`);
  const { cutSoFar: _, choice: __, packing: ___, ...inputs } = made.inputs;
  return inputs;
}

const [seasons, flights, draws, seed, believed, out = ""] = process.argv
  .slice(2)
  .map((word, i) => (i < 5 ? Number(word) : word)) as [number, number, number, number, number, string];
const plans = await Promise.all(examples.map(planOf));
const random = randomOf(seed);
const openings: Opening[] = [];
for (let i = 0; i < seasons; i++) {
  const base = plans[i % plans.length]!;
  // another rocket of the kind: its mass moves the coast against the settings that the tool can make
  const mass = base.rocket.mass * (0.85 + 0.4 * random.uniform());
  const options = { flights, draws, believedDrag: believed * base.spread.dragScale, believedDelay: believed };
  const rocket = { ...base.rocket, mass };
  openings.push(...(await season({ ...base, rocket }, options, random, seed * 100_003 + i * 101)));
  if (i % 10 === 0) process.stderr.write(`${i} of ${seasons}\r`);
}
writeFileSync(out, JSON.stringify(openings));
