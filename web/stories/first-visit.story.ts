import { decide, WORKED_PLAN } from "./given/command-line.js";
import { answerFigures, settingFigures } from "./given/figures.js";
import { WORKED_EXAMPLE } from "./pages/bench.js";
import { expect, story } from "./story.js";

story(
  "A new visitor finds the delay to cut of the worked example, with the command line's figures",
  async ({ bench }) => {
    const told = await decide(WORKED_PLAN);
    const figures = answerFigures(told);

    await story.step("the first page already says what to cut", async () => {
      const card = bench.card(WORKED_EXAMPLE);
      await expect(card).toContainText("invented example");
      await expect(card).toContainText(figures.lead);
      await expect(card).toContainText(figures.clean);
      await expect(card).toContainText(figures.detail);
    });

    const plan = await bench.openPlan(WORKED_EXAMPLE);
    await story.step("who goes to its last section at once gets there, whether it is drawn yet or not", async () => {
      await plan.goTo("Debrief");
      await plan.settled();
      await expect(plan.page.getByRole("heading", { level: 2, name: /^Debrief/ })).toBeInViewport();
    });

    await story.step("the plan says the cut, its odds and how it opens", async () => {
      await plan.settled();
      await expect(plan.answer).toContainText(figures.lead);
      await expect(plan.answer).toContainText(figures.detail);
      await expect(plan.odds).toContainText(figures.clean);
      await expect(plan.answer).toContainText(`9 in 10 open below ${figures.below}`);
      await expect(plan.answer).toContainText(`9 in 10 open above ${figures.above}`);
      await expect(plan.answer).toContainText(figures.when);
      await expect(plan.answer).toContainText(`holds ${figures.holds}`);
    });

    await story.step("every other delay that can be made stands beside it", async () => {
      await plan.section("Delay");
      const rows = await plan.settingRows();
      expect(rows).toHaveLength(told.settings.length);
      for (const [i, row] of settingFigures(told).entries()) expect(rows[i]).toMatchObject(row);
      await expect(plan.settings.getByRole("radio", { checked: true })).toHaveAccessibleName(/the delay to cut/);
    });
  },
);
