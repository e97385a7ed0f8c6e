import { focusShows, tabTo } from "./given/accessible.js";
import { WORKED_EXAMPLE } from "./pages/bench.js";
import { PlanPage } from "./pages/plan.js";
import { field } from "./pages/sheet.js";
import { expect, story } from "./story.js";

story("by the keyboard alone: the delay, another setting, the wind, a reading @desk", async ({ bench, page }) => {
  const press = (key: string): Promise<void> => page.keyboard.press(key);
  await expect(bench.card(WORKED_EXAMPLE)).toContainText(/Cut to \d/);
  await tabTo(page, bench.card(WORKED_EXAMPLE).getByRole("link", { name: WORKED_EXAMPLE, exact: true }));
  await press("Enter");
  const plan = new PlanPage(page);
  await expect(plan.heading).toHaveText(WORKED_EXAMPLE);
  const first = await plan.settled();

  await story.step("the wind", async () => {
    await tabTo(page, field(page, "Wind"));
    await press("ControlOrMeta+a");
    const windy = await plan.answerAfter(() => page.keyboard.type("7 m/s"));
    expect(windy).not.toBe(first);
    await press("ControlOrMeta+a");
    expect(await plan.answerAfter(() => page.keyboard.type("2 m/s"))).toBe(first);
  });

  await story.step("another setting, and back", async () => {
    await tabTo(page, plan.settings.getByRole("radio", { checked: true }));
    await plan.answerAfter(() => press("ArrowUp"));
    await expect(plan.answer).toContainText("your own choice");
    expect(await focusShows(page)).toBeNull();
    await plan.answerAfter(() => press("ArrowDown"));
    expect(await plan.settled()).toBe(first);
  });

  await story.step("the motor in hand and its first reading", async () => {
    const cut = await plan.section("Cut");
    await tabTo(page, cut.getByRole("button", { name: "Name the motor in hand" }));
    await press("Enter");
    const dialog = page.getByRole("alertdialog");
    await tabTo(page, field(dialog, "What you wrote on its bag"));
    await page.keyboard.type("Bag 4");
    await tabTo(page, field(dialog, "Lot, as printed"));
    await page.keyboard.type("L-18");
    await tabTo(page, dialog.getByRole("button", { name: "Put it into the plan" }));
    await press("Enter");
    await tabTo(page, field(cut, "before the cut"));
    await page.keyboard.type("22.2 mm");
    await tabTo(page, cut.getByRole("button", { name: "Record this reading" }));
    await press("Enter");
    await tabTo(page, dialog.getByRole("button", { name: "Record the depth before" }));
    await press("Enter");
    await expect(dialog).toBeHidden();
    await expect(cut.getByRole("table", { name: "Readings, as they were recorded" })).toContainText("22.2 mm");
  });

  await story.step("there is a way out at the end", async () => {
    const left = (): Promise<boolean> => page.evaluate(() => document.activeElement === document.body);
    for (let presses = 0; presses < 250 && !(await left()); presses += 1) await press("Tab");
    expect(await left(), "the focus leaves the page at its end").toBe(true);
  });
});

story("who asked for less motion gets none @desk", async ({ bench, page }) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  await field(page, "Wind").fill("7 m/s");
  const moving = await page.evaluate(() =>
    [...document.querySelectorAll("*")].flatMap((each) => {
      const { transitionDuration, animationName } = getComputedStyle(each);
      const still =
        animationName === "none" && transitionDuration.split(",").every((time) => Number.parseFloat(time) === 0);
      return still ? [] : [each.outerHTML.slice(0, 120)];
    }),
  );
  expect(moving).toEqual([]);
});

story("with letters twice as large nothing is cut off @desk", async ({ bench, page }) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  await page.evaluate(() => document.documentElement.style.setProperty("font-size", "200%"));
  const lost = () =>
    page.evaluate(() => {
      const root = document.documentElement;
      const clipped = [...document.querySelectorAll("body *")].filter((each) => {
        const { overflowX, overflowY, position } = getComputedStyle(each);
        if (
          !each.checkVisibility() ||
          position === "absolute" ||
          each.clientWidth <= 2 ||
          each instanceof HTMLInputElement
        )
          return false;
        const over = (way: string, inside: number, room: number): boolean =>
          /hidden|clip/.test(way) && inside > room + 2;
        return (
          over(overflowX, each.scrollWidth, each.clientWidth) || over(overflowY, each.scrollHeight, each.clientHeight)
        );
      });
      const sideways = root.scrollWidth > root.clientWidth ? [`page: ${root.scrollWidth}`] : [];
      return [...sideways, ...clipped.map((each) => each.outerHTML.slice(0, 120))];
    });
  // pictures are drawn anew for their width
  await expect.poll(lost).toEqual([]);
});
