import { expect, test } from "vitest";
import { calmPlan } from "../../test/plan.js";
import { homeCutOf, longestOfWeather } from "../decision/home-cut.js";
import type { DecisionInputs } from "../decision/inputs.js";
import { judgeSettings, type OddsOptions, runHere } from "../decision/odds.js";
import { oddsOverDelay } from "../decision/odds-over-delay.js";
import { settingsOf } from "../decision/settings.js";
import { weatherWindow } from "../decision/weather-window.js";
import type { Learned } from "./learned.js";
import { withLearned } from "./with-learned.js";

const { seconds, fraction } = calmPlan.spread.delay;

/** Motors of this type burn `offset` longer than they are set to: known as if of very many flights. */
function burning(offset: number): DecisionInputs {
  const learned: Learned = {
    drag: { mean: 0, sd: calmPlan.spread.dragScale },
    impulse: { mean: 0, sd: calmPlan.spread.totalImpulse },
    correlation: 0,
    flights: { rocket: 0, motor: 100, both: 0 },
    delay: {
      mean: [offset, 0, 0],
      scale: [1e-8, 0, 0, 0, 1e-10, 0, 0, 0, 1],
      motorScale: 1,
      degrees: 1e6,
      prior: { seconds, fraction },
      seen: 100,
      bounds: 0,
    },
  };
  return withLearned(calmPlan, learned);
}

const options: OddsOptions = { draws: 128, seed: 1, flight: { model: "pitching" }, run: runHere };

test("odds over any delay: set to 10 s and burning 1 s longer is as good as set to 11 s", async () => {
  const [learned] = await oddsOverDelay(burning(1), [10], { draws: 256 });
  const [plain] = await oddsOverDelay(calmPlan, [11], { draws: 256 });
  // the scatter is that of the delay as set: a little less at 10 s
  expect(Math.abs((learned?.odds.clean ?? 0) - (plain?.odds.clean ?? 1))).toBeLessThan(0.03);
  const [unlearned] = await oddsOverDelay(calmPlan, [10], { draws: 256 });
  expect(Math.abs((unlearned?.odds.clean ?? 0) - (plain?.odds.clean ?? 0))).toBeGreaterThan(0.1);
});

test("the weather window: the same shift at every wind", async () => {
  const asked = { winds: [0, 3, 6], tilts: [0], draws: 128 };
  const learned = await weatherWindow(burning(1), { ...asked, delay: 10 });
  const plain = await weatherWindow(calmPlan, { ...asked, delay: 11 });
  const unlearned = await weatherWindow(calmPlan, { ...asked, delay: 10 });
  expect(Math.abs((unlearned.clean[0]?.[0] ?? 0) - (plain.clean[0]?.[0] ?? 0))).toBeGreaterThan(0.1);
  expect(learned.clean.flat().map((odds, i) => Math.abs(odds - (plain.clean.flat()[i] ?? 9)) < 0.05)).toEqual([
    true,
    true,
    true,
  ]);
});

test("the cut at home leaves longer where the motors of a type burn shorter", async () => {
  const homeOf = async (inputs: DecisionInputs): Promise<number> => {
    const plans = settingsOf(inputs);
    const judged = await judgeSettings(inputs, plans, options);
    const last = plans.length - 1;
    // as if today's best were the shortest: the longest that weather could still ask for is what is looked for
    return (
      homeCutOf(plans, last, await longestOfWeather(inputs, plans, judged.rough, options))?.delay ??
      plans[last]?.delay ??
      0
    );
  };
  expect(await homeOf(burning(-2.5))).toBeGreaterThan(await homeOf(burning(2.5)));
});
