import { readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { isAccessible } from "./given/accessible.js";
import { BenchPage, WORKED_EXAMPLE } from "./pages/bench.js";
import { PlanPage } from "./pages/plan.js";
import { field } from "./pages/sheet.js";
import { expect, story } from "./story.js";

interface Workshop extends Window {
  /** Workers that were started. */
  workers: Worker[];
  /** Workers that are started now fail at once. */
  broken: boolean;
}

/** Lets the story get hold of the app's workers. */
async function holdWorkers(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const here = window as unknown as Workshop;
    here.workers = [];
    here.broken = false;
    window.Worker = class extends Worker {
      constructor(...[address, options]: ConstructorParameters<typeof Worker>) {
        super(here.broken ? "no-such-worker.js" : address, options);
        here.workers.push(this);
      }
    };
  });
}

/** Ends all workers; gives how many there were. */
function endWorkers(page: Page, broken: boolean): Promise<number> {
  return page.evaluate((fail) => {
    const here = window as unknown as Workshop;
    here.broken = fail;
    const ended = here.workers.splice(0);
    for (const worker of ended) worker.terminate();
    return ended.length;
  }, broken);
}

story("when the computing is struck down, it starts again and the answer comes", async ({ page }) => {
  await holdWorkers(page);
  const bench = new BenchPage(page);
  await bench.open();
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  const wind = field(await plan.section("Field & weather"), "Wind");
  await plan.answerAfter(async () => {
    await wind.fill("6 m/s");
    expect(await endWorkers(page, false)).toBeGreaterThan(0);
  });
  await expect(plan.answer).not.toContainText("The computing stopped");
  expect(await endWorkers(page, false), "a new crew stood in").toBeGreaterThan(0);
  await plan.answerAfter(() => wind.fill("3 m/s"));
});

story(
  "when it is struck down again and again, the sheet says so in words and goes on with the next change",
  async ({ page }) => {
    await holdWorkers(page);
    const bench = new BenchPage(page);
    await bench.open();
    const plan = await bench.openPlan(WORKED_EXAMPLE);
    await plan.settled();
    const wind = field(await plan.section("Field & weather"), "Wind");
    await wind.fill("6 m/s");
    await endWorkers(page, true);
    await wind.fill("7 m/s");
    await expect(plan.answer).toContainText("The computing stopped 4 times in a row. Your documents are kept.");
    await expect(wind).toHaveValue("7 m/s");

    await story.step("with the next change it works again", async () => {
      await endWorkers(page, false);
      await wind.fill("8 m/s");
      await expect(plan.answer).not.toContainText("The computing stopped");
      await plan.settled();
    });
  },
);

story("a screen that breaks down still gives the documents out", async ({ bench, page, guard }) => {
  guard.expects(/struck/);
  const sheet = bench.card(WORKED_EXAMPLE).getByRole("link", { name: WORKED_EXAMPLE, exact: true });
  const address = (await sheet.getAttribute("href")) ?? "";
  await page.evaluate(() => {
    Number.prototype.toFixed = () => {
      throw new Error("struck");
    };
  });
  // the bench may break down before, when the last odds come for its card
  await page.evaluate((hash) => location.assign(hash), address);
  await expect(bench.card(WORKED_EXAMPLE)).toHaveCount(0);
  await expect(page.getByRole("heading", { level: 1, name: "The bench met a defect of its own" })).toBeVisible();
  const saved = page.waitForEvent("download");
  await page.getByRole("button", { name: "Export everything" }).click();
  expect(await readFile(await (await saved).path(), "utf8")).toContain(WORKED_EXAMPLE);
  await page.getByRole("button", { name: "To the bench" }).click();
  await bench.isOpen();
  await expect(bench.card(WORKED_EXAMPLE)).toContainText(/Cut to \d/);
});

story("a page whose code cannot be had says so, and opens once it is tried again", async ({ page, guard }) => {
  guard.expects(/ERR_FAILED/);
  const code = /\/plan-page-/;
  await page.route(code, (route) => route.abort());
  const bench = new BenchPage(page);
  await bench.open();
  await bench.card(WORKED_EXAMPLE).getByRole("link", { name: WORKED_EXAMPLE, exact: true }).click();
  await expect(page.getByRole("heading", { level: 1, name: "This page could not be loaded" })).toBeVisible();
  await expect(page.getByRole("alert")).toContainText("Your documents are kept");
  await isAccessible(page, "a page that could not be loaded");
  await page.unroute(code);
  await page.getByRole("button", { name: "Try again" }).click();
  await new PlanPage(page).settled();
});
