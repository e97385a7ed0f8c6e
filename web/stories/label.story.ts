import { closeUp, codeIn } from "./given/camera.js";
import { WORKED_EXAMPLE } from "./pages/bench.js";
import { choose, words } from "./pages/sheet.js";
import { expect, story } from "./story.js";

story("The label of a bag carries its motor to another device", async ({ bench, page }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await choose(page, await plan.section("Motor"), "Motor", "Bag 3 (motor in hand)");
  await expect(plan.answer).toContainText("Now");
  const label = await plan.goToLabel();
  const said = await words(label.label);
  expect(said).toContain("Bag 3");
  expect(said).toContain("Do not lengthen");

  await story.step("it prints", async () => {
    await page.evaluate(() => {
      globalThis.print = () => document.documentElement.setAttribute("data-printed", "");
    });
    await page.getByRole("button", { name: /^Print on a label/ }).click();
    await expect(page.locator("html[data-printed]")).toHaveCount(1);
  });

  const text = await story.step("a camera reads its code", async () => codeIn(page, await closeUp(page, label.code)));
  expect(JSON.parse(text)).toMatchObject({ kind: "motor-in-hand", name: "Bag 3", lot: "L-17" });

  await story.step("the motor is gone, as on a device that never knew it", async () => {
    await page.getByRole("banner").getByRole("link", { name: "Bag 3" }).click();
    const dialog = page.getByRole("alertdialog");
    await page.getByRole("button", { name: "Delete", exact: true }).click();
    await expect(dialog).toContainText(WORKED_EXAMPLE);
    await dialog.getByRole("button", { name: "Delete it" }).click();
    await page.getByRole("link", { name: "Bench", exact: true }).click();
    await expect(bench.card(WORKED_EXAMPLE)).toContainText("The plan is kept as it is");
  });

  await story.step("its text is pasted, and the same motor is in hand again", async () => {
    const place = await bench.goToImport();
    await place.paste(text);
    await expect(place.report).toContainText("Taken in: 1 document.");
    await place.report.getByRole("link", { name: "Bag 3" }).click();
    await page.getByRole("link", { name: "Label for the bag" }).click();
    await label.isOpen();
    expect(await words(label.label)).toBe(said);
  });
});
