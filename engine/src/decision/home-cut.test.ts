import { expect, test } from "vitest";
import { windFrom } from "../../reference/trajectories/inputs.js";
import { calmPlan } from "../../test/plan.js";
import { fly } from "../flight/fly.js";
import { choose } from "./choose.js";
import { homeCutOf, longestOfWeather } from "./home-cut.js";
import type { CuttingTool, DecisionInputs } from "./inputs.js";
import { judgeSettings, type OddsOptions, runHere } from "./odds.js";
import { achievableSettings, type Element } from "./removals.js";

const options: OddsOptions = { draws: 64, seed: 1, flight: {}, run: runHere };

/** Cuts in steps of half a second, on a day whose wind may grow. */
const fine: CuttingTool = {
  kind: "stop",
  name: "bit",
  from: 0.79375e-3,
  to: 3.175e-3,
  step: 0.396875e-3,
  depthPerSecond: 0.79375e-3,
  depthError: 0.1e-3,
};
const inputs: DecisionInputs = { ...calmPlan, tool: fine };
const plans = achievableSettings(inputs.motor.delay as Element, fine);
const flight = fly(inputs);

async function bestOn(day: DecisionInputs, tie: "shorter" | "longer"): Promise<number> {
  return choose((await judgeSettings(day, plans, options)).settings, day.limits, tie).index;
}

async function homeCut(weatherRange?: DecisionInputs["weatherRange"]) {
  const day = weatherRange === undefined ? inputs : { ...inputs, weatherRange };
  const today = await bestOn(day, "shorter");
  return { today: plans[today]!, home: homeCutOf(plans, today, await longestOfWeather(day, plans, flight, options)) };
}

test("homeCutOf() is never a deeper cut than today's, and one of the settings", async () => {
  const ranges: DecisionInputs["weatherRange"][] = [
    undefined,
    { wind: [0, 9], temperature: [255, 315] },
    { wind: [1, 1], temperature: [288, 288] },
  ];
  for (const range of ranges) {
    const { today, home } = await homeCut(range);
    if (home === null) continue;
    expect(home.delay).toBeGreaterThan(today.delay);
    expect(plans).toContain(home);
  }
});

test("homeCutOf() leaves room for the longest winner over the range, ties going to the longer", async () => {
  const range = { wind: [0, 2], temperature: [255, 320] } as const;
  const { today, home } = await homeCut(range);
  const winners: number[] = [];
  for (const wind of range.wind)
    for (const temperature of range.temperature) {
      const blowing = { ...windFrom(wind, 270), gradientHeight: 300 };
      const day = { ...inputs, air: { ...inputs.air, temperature }, wind: blowing };
      winners.push(await bestOn(day, "longer"));
    }
  const longest = plans[Math.min(...winners)]!;
  expect(longest.delay).toBeGreaterThan(today.delay);
  expect(home).toEqual(longest);
});

test("homeCutOf() is null where today's own setting is the longest that can be made", async () => {
  const only = plans.slice(4, 5);
  expect(homeCutOf(only, 0, await longestOfWeather(inputs, only, flight, options))).toBeNull();
});
