import type { Locator } from "@playwright/test";
import { WORKED_EXAMPLE } from "./pages/bench.js";
import { field, words } from "./pages/sheet.js";
import { expect, story } from "./story.js";

const percentOf = (text: string): number => Number(/(\d+) % clean/.exec(text)?.[1]);

story("More wind costs odds, undo brings the old figures back and redo the new", async ({ bench }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  const calm = await plan.settled();
  const calmRows = await plan.settingRows();
  const weather = await plan.section("Field & weather");
  const wind = field(weather, "Wind");
  const typed = await wind.inputValue();

  const breezy = await story.step("a breeze: the odds fall", () => plan.answerAfter(() => wind.fill("5 m/s")));
  const windy = await story.step("more wind: they fall further", () => plan.answerAfter(() => wind.fill("8 m/s")));
  expect(percentOf(breezy)).toBeLessThan(percentOf(calm));
  expect(percentOf(windy)).toBeLessThan(percentOf(breezy));
  expect(await words(plan.odds)).toContain(`${percentOf(windy)} %`);
  const windyRows = await plan.settingRows();
  expect(windyRows).not.toEqual(calmRows);

  await story.step("undo: what was typed in one go goes in one go, and the old figures are back", async () => {
    expect(await plan.answerAfter(() => plan.undo())).toBe(calm);
    await expect(wind).toHaveValue(typed);
    expect(await plan.settingRows()).toEqual(calmRows);
  });

  await story.step("redo: the new ones", async () => {
    expect(await plan.answerAfter(() => plan.redo())).toBe(windy);
    await expect(wind).toHaveValue("8 m/s");
    expect(await plan.settingRows()).toEqual(windyRows);
  });
});

/** Gathers each wording that some part of the page has from now on, first the one that it has now. */
async function wordings(part: Locator, matching: RegExp) {
  return part.evaluateHandle(
    (element, { source }) => {
      const found = new Set<string>();
      const look = (): void => {
        found.add(new RegExp(source).exec(element.textContent ?? "")?.[0] ?? "nothing of it");
      };
      look();
      new MutationObserver(look).observe(element, { subtree: true, childList: true, characterData: true });
      return found;
    },
    { source: matching.source },
  );
}

story("What a check says goes on being said while new odds settle", async ({ bench }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  const packing = await plan.section("Packing");
  const checks = await wordings(plan.answer, /One check says look|No check says/);
  const landings = await wordings(packing, /Opened, of 128 flights/);
  await plan.answerAfter(async () => field(await plan.section("Field & weather"), "Wind").fill("2.6 m/s"));
  expect(await checks.evaluate((found) => [...found])).toEqual(["One check says look"]);
  expect(await landings.evaluate((found) => [...found])).toEqual(["Opened, of 128 flights"]);
});

/** Gathers every height that some part of the page has from now on [px]. */
async function heights(part: Locator) {
  return part.evaluateHandle((element) => {
    const found = new Set<number>();
    new ResizeObserver(() => found.add(Math.round(element.getBoundingClientRect().height))).observe(element);
    return found;
  });
}

story("The answer bar tells what holds and which check speaks, and keeps its height", async ({ bench }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  await expect(plan.answer.getByText(/^holds\s(over\s)?[\d.]+\s%/)).toBeVisible();
  await expect(plan.answer.getByText("Opened landings outside the field")).toBeVisible();
  const found = await heights(plan.answer);
  await plan.answerAfter(async () => field(await plan.section("Field & weather"), "Wind").fill("2.6 m/s"));
  expect(await found.evaluate((all) => [...all])).toHaveLength(1);
});
