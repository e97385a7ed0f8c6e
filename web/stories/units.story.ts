import { WORKED_EXAMPLE } from "./pages/bench.js";
import { field } from "./pages/sheet.js";
import { expect, story } from "./story.js";

/** By definition [m]. */
const [FOOT, INCH] = [0.3048, 0.0254];

/** By definition of the mile and the hour [m/s]. */
const MPH = 0.44704;

/** What stands beside a field: four digits, as typed figures have no more. */
const beside = (value: number, unit: string): RegExp => new RegExp(`=\\s${Number(value.toPrecision(4))}\\s${unit}`);

story("Shown in inches and feet the figures change, and what was typed stays as it was typed", async ({ bench }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  const metric = await plan.settingRows();
  await expect(plan.answer).toContainText(/open below \d+\sm\/s/);
  await plan.showInchesAndFeet();

  await story.step("computed figures are in feet", async () => {
    await expect(plan.answer).toContainText(/open below \d+\sft\/s/);
    await expect(plan.answer).toContainText(/open above [\d,]+\sft/);
    await plan.settled();
    const imperial = await plan.settingRows();
    expect(imperial).toHaveLength(metric.length);
    for (const [i, row] of imperial.entries()) {
      expect(row.clean).toBe(metric[i]?.clean);
      for (const column of ["half", "below", "above"] as const) {
        const [feet, metres] = [Number(row[column]), Number(metric[i]?.[column])];
        expect(Math.abs(feet * FOOT - metres), `${column} of ${row.delay}`).toBeLessThanOrEqual(FOOT / 2 + 0.5);
      }
    }
  });

  await story.step("what was typed stays, with the other unit beside it", async () => {
    const rocket = await plan.section("Rocket");
    await expect(field(rocket, "Diameter")).toHaveValue("76 mm");
    await expect(rocket).toContainText(beside(0.076 / INCH, "in"));
    const weather = await plan.section("Field & weather");
    await expect(field(weather, "Wind")).toHaveValue("2 m/s");
    await expect(weather).toContainText(beside(2 / MPH, "mph"));
    await expect(weather).toContainText(/rail \d+(\.\d+)?\sft/);
  });

  await story.step("at the pad wind, gauge and edge are in one unit, and a press is one of it", async () => {
    const pad = await plan.goToPad();
    await expect(pad.wind).toContainText(/4\smph/);
    await expect(pad.page.getByRole("main")).toContainText(/edge \d+\smph/);
    await pad.moreWind();
    await expect(pad.wind).toContainText(/5\smph/);
  });
});
