import { readFile } from "node:fs/promises";
import { WORKED_EXAMPLE } from "./pages/bench.js";
import { PlanPage } from "./pages/plan.js";
import { field } from "./pages/sheet.js";
import { expect, story } from "./story.js";

story("two tabs of one plan stay in step, also while something is half typed", async ({ bench, page }) => {
  const here = await bench.openPlan(WORKED_EXAMPLE);
  const other = await page.context().newPage();
  await other.goto(page.url());
  const there = new PlanPage(other);
  const before = await there.settled();
  expect(before).toBe(await here.settled());
  const windHere = field(await here.section("Field & weather"), "Wind");
  const windThere = field(await there.section("Field & weather"), "Wind");
  const fromHere = field(await here.section("Field & weather"), "From");
  const fromThere = field(await there.section("Field & weather"), "From");

  await story.step("the wind that is typed here moves the odds there", async () => {
    const after = await there.answerAfter(async () => {
      await windHere.fill("8 m/s");
    });
    await expect(windThere).toHaveValue("8 m/s");
    expect(after).toBe(await here.settled());
  });

  await story.step("what is half typed here stays when another field changes there", async () => {
    await windHere.fill("5 m");
    await fromThere.fill("250 deg");
    await expect(fromHere).toHaveValue("250 deg");
    await expect(windHere).toHaveValue("5 m");
    await expect(windHere).toBeFocused();
    await windHere.pressSequentially("/s");
    await expect(windThere).toHaveValue("5 m/s");
    await expect(fromThere).toHaveValue("250 deg");
    expect(await there.settled()).toBe(await here.settled());
  });

  await story.step("all of it is kept", async () => {
    await other.reload();
    await expect(field(await there.section("Field & weather"), "Wind")).toHaveValue("5 m/s");
    await expect(field(await there.section("Field & weather"), "From")).toHaveValue("250 deg");
  });
});

story("a tab that was left open is told that a newer version runs elsewhere", async ({ bench, page }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  const wind = field(await plan.section("Field & weather"), "Wind");
  await wind.fill("4 m/s");
  await plan.settled();

  await story.step("a newer version opens the database elsewhere", async () => {
    const newer = await page.context().newPage();
    await newer.goto("#/tools");
    await newer.evaluate(
      () =>
        new Promise<void>((resolve, reject) => {
          const request = indexedDB.open("delaywright", 990);
          request.onerror = () => reject(request.error);
          request.onsuccess = () => {
            request.result.close();
            resolve();
          };
        }),
    );
    await newer.close();
    const notice = page.getByRole("alert");
    await expect(notice).toContainText("A newer version of this app runs in another tab.");
    await expect(notice).toContainText("Everything is kept.");
    await expect(notice.getByRole("button", { name: "Load the page again" })).toBeVisible();
  });

  await story.step(
    "what is typed on is not lost: it can be exported, and only then the page is loaded again",
    async () => {
      await wind.fill("6 m/s");
      const notice = page.getByRole("alert");
      await expect(notice).toContainText(`Your last change, in ${WORKED_EXAMPLE}, is still in memory`);
      await expect(notice.getByRole("button", { name: "Load the page again" })).toBeHidden();
      const saved = page.waitForEvent("download");
      await notice.getByRole("button", { name: "Export everything" }).click();
      expect(await readFile(await (await saved).path(), "utf8")).toContain('"6 m/s"');
      await expect(notice.getByRole("button", { name: "Load the page again" })).toBeVisible();
    },
  );
});
