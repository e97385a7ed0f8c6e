import type { Page } from "@playwright/test";
import { fitsWidth, hasLargeTargets, isAccessible } from "./given/accessible.js";
import { type BenchPage, WORKED_EXAMPLE } from "./pages/bench.js";
import { RuleSetPage } from "./pages/checks.js";
import type { PlanPage } from "./pages/plan.js";
import { field } from "./pages/sheet.js";
import { expect, story } from "./story.js";

const GLOVE = 64;
const TOUCH = 44;

type Look = (screen: string, least?: number) => Promise<void>;

/** Goes to every screen, one after the other, and looks at each. */
async function everyScreen(page: Page, bench: BenchPage, look: Look): Promise<void> {
  await expect(bench.card(WORKED_EXAMPLE)).toContainText(/Cut to \d/);
  await look("the bench, first visit");
  await page.getByRole("button", { name: `More, ${WORKED_EXAMPLE}`, exact: true }).click();
  await look("the menu of a card");
  await page.getByRole("menuitem", { name: "Delete" }).click();
  await look("the question before something is deleted");
  await page.keyboard.press("Escape");
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  await theSheet(page, plan, look);
  await plan.goToBench();
  const fresh = await bench.newPlan();
  await look("a new plan");
  await fresh.goToBench();
  await look("the bench, with own plans");
  for (const [shelf, name] of [
    ["Rockets", "Demo rocket 76"],
    ["Motor types", "Demo H150"],
    ["Motors in hand", "Bag 4"],
    ["Tools", "Two-collar cutter (demo)"],
    ["Fields", "Larkmoor"],
  ] as const) {
    const open = await bench.openShelf(shelf);
    await look(`the library of ${shelf}`);
    await open.openDocument(name);
    await look(`the page of ${name}`);
    await page.goto("#/");
  }
  for (const [shelf, what] of [
    ["Flyers", "flyer"],
    ["Rule sets", "rule set"],
  ] as const) {
    const open = await bench.openShelf(shelf);
    await look(`the empty library of ${shelf}`);
    await open.make(what);
    if (shelf === "Rule sets") await new RuleSetPage(page).add("Lean of the guide", "High Power");
    await look(`the page of a new ${what}`);
    await page.goto("#/");
  }
  const place = await bench.goToImport();
  await place.paste('{"kind":"rocket","version":1,"name":"Half","diameter":"76"}');
  await look("the import");
  await page.goto("#/");
  const desk = await bench.goToCardDesk();
  await look("the card desk");
  await desk.byCode();
  await look("the card desk, by a code");
}

/** The plan's sheet in its states, the label and the pad. */
async function theSheet(page: Page, plan: PlanPage, look: Look): Promise<void> {
  const titles = ["Rocket", "Motor", "Field & weather", "Delay", "Cut", "Packing", "Checks", "Prep", "Card"] as const;
  for (const title of titles) await plan.section(title);
  await look("a plan, settled");
  const wind = field(await plan.section("Field & weather"), "Wind");
  await wind.fill("2 m");
  await expect(plan.answer).toContainText("With the last right value of");
  await look("a plan with an error");
  await wind.fill("2 m/s");
  await plan.settled();
  const cut = await plan.section("Cut");
  await cut.getByRole("button", { name: "Name the motor in hand" }).click();
  await look("the question for the motor in hand");
  await page.keyboard.press("Escape");
  await plan.nameMotorInHand("Bag 4", "L-18");
  await plan.read({ before: "22.2 mm" });
  await plan.record("Record the depth before");
  await plan.read({ after: "29 mm" });
  await plan.answerAfter(async () => {
    await plan.record("Record the cut");
  });
  await look("an over-cut");
  const label = await plan.goToLabel();
  await expect(label.code).toBeVisible();
  await look("the label");
  await page.goBack();
  const pad = await plan.goToPad();
  await look("the pad", GLOVE);
  await pad.backToPlan();
}

for (const theme of ["Light", "Dark", "Sunlight"]) {
  story(`in ${theme.toLowerCase()} every screen can be read, heard and hit by everybody`, async ({ bench, page }) => {
    story.setTimeout(180_000);
    await page.getByRole("button", { name: "Display" }).click();
    await page.getByRole("menuitemradio", { name: theme, exact: true }).click();
    await everyScreen(page, bench, async (screen, least = TOUCH) => {
      await isAccessible(page, screen);
      if (theme !== "Light") return;
      await hasLargeTargets(page, screen, least);
      await fitsWidth(page, screen);
    });
  });
}

story("where a screen breaks down, its page can be read and hit too", async ({ bench, page, guard }) => {
  guard.expects(/struck/);
  await page.evaluate(() => {
    const { toFixed } = Number.prototype;
    Number.prototype.toFixed = () => {
      throw new Error("struck");
    };
    addEventListener("whole again", () => {
      Number.prototype.toFixed = toFixed;
    });
  });
  await bench.card(WORKED_EXAMPLE).getByRole("link", { name: WORKED_EXAMPLE, exact: true }).click();
  await expect(page.getByRole("button", { name: "Export everything" })).toBeVisible();
  await page.evaluate(() => dispatchEvent(new Event("whole again")));
  await isAccessible(page, "the error screen");
  await hasLargeTargets(page, "the error screen", TOUCH);
});

story("on the narrowest phone nothing runs out of the page @desk", async ({ bench, page }) => {
  story.setTimeout(120_000);
  await page.setViewportSize({ width: 320, height: 640 });
  await everyScreen(page, bench, (screen) => fitsWidth(page, screen));
});
