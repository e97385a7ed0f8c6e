import { WORKED_EXAMPLE } from "./pages/bench.js";
import { words } from "./pages/sheet.js";
import { expect, story } from "./story.js";

const MINUTE = 60_000;

story(
  "At the pad one sees whether it still is good, up to which wind, and how old the reading is",
  async ({ bench, page }) => {
    const noon = new Date(2026, 4, 2, 12, 0);
    await page.clock.setFixedTime(noon);
    const plan = await bench.openPlan(WORKED_EXAMPLE);
    await plan.settled();
    await plan.cutAsPlanned("Bag 6", "22.2 mm");

    const pad = await plan.goToPad();
    await expect(pad.heading).toContainText("Bag 6 is cut to");
    await expect(pad.wind).toContainText("2 m/s");

    await story.step("the reading is over an hour old: it is confirmed", async () => {
      await expect(pad.answer).toHaveText("Read the wind");
      await pad.foot.getByRole("button", { name: /^It still blows/ }).click();
      await expect(pad.wind).toContainText("just now");
      await expect(pad.answer).toHaveText(/^Yes, (to|past) /);
    });

    await story.step("it says what ends it: nearer than the odds do, it drifts off the field", async () => {
      await expect(page.getByRole("main")).toContainText(
        /Past the edge a check says stop: opened landings outside the field/,
      );
    });

    const edge = Number(/(\d+(\.\d+)?)/.exec(await words(pad.answer))?.[1]);
    const windNow = async (): Promise<number> => Number.parseFloat(await words(pad.wind.getByRole("status")));

    await story.step("the wind steps up until it says that it is no longer good", async () => {
      while ((await windNow()) <= edge) await pad.moreWind();
      await expect(pad.answer).toHaveText("No: wait");
      await expect(pad.foot).toContainText("Over the edge by");
      expect(await windNow()).toBeGreaterThan(edge);
    });

    await story.step("and down again until it is", async () => {
      while ((await windNow()) > edge) await pad.lessWind();
      await expect(pad.answer).toHaveText(/^Yes, (to|past) /);
    });

    await story.step("where it lands names the unopened first", async () => {
      const lands = await words(pad.lands.getByRole("paragraph").first());
      expect(lands).toMatch(/^unopened/);
      await expect(pad.lands.getByRole("paragraph").nth(1)).toContainText(/^\s*opened/);
    });

    await story.step("as soon as a minute turns over a new reading is one of just now", async () => {
      const back = await pad.backToPlan();
      await page.clock.setFixedTime(new Date(noon.getTime() + MINUTE - 1000));
      await back.goToPad();
      await page.clock.setFixedTime(new Date(noon.getTime() + MINUTE));
      const before = await windNow();
      await pad.lessWind();
      await expect.poll(windNow).toBeLessThan(before);
      expect(await words(pad.wind)).toContain("read just now");
    });

    await story.step("later the reading tells its age, and after an hour it is asked for again", async () => {
      const back = await pad.backToPlan();
      await page.clock.setFixedTime(new Date(noon.getTime() + 21 * MINUTE));
      await back.goToPad();
      await expect(pad.wind).toContainText("20 min ago");
      await pad.backToPlan();
      await page.clock.setFixedTime(new Date(noon.getTime() + 70 * MINUTE));
      await back.goToPad();
      await expect(pad.answer).toHaveText("Read the wind");
    });
  },
);
