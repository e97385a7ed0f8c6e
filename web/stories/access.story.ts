import type { Page } from "@playwright/test";
import { fitsWidth, hasLargeTargets, isAccessible } from "./given/accessible.js";
import { putDocuments, writesGo } from "./given/database.js";
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
  await page.getByRole("button", { name: "Display" }).click();
  await expect(page.getByRole("menu", { name: "Display" })).toBeVisible();
  await look("how it is shown");
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: `More, ${WORKED_EXAMPLE}`, exact: true }).click();
  await expect(page.getByRole("menuitem", { name: "Delete" })).toBeVisible();
  await look("the menu of a card");
  await page.getByRole("menuitem", { name: "Delete" }).click();
  await expect(page.getByRole("alertdialog")).toBeVisible();
  await look("the question before something is deleted");
  await page.keyboard.press("Escape");
  await bench.actOnPlan(WORKED_EXAMPLE, "Rename");
  await expect(page.getByRole("textbox", { name: "Name" })).toBeVisible();
  await look("another name");
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
  await bench.openShelf("Flights");
  await look("the empty library of flights");
  await page.goto("#/");
  const place = await bench.goToImport();
  await place.paste('{"kind":"rocket","version":1,"name":"Half","diameter":"76"}');
  await look("the import");
  await page.goto("#/");
  const desk = await bench.goToCardDesk();
  await look("the card desk");
  await desk.byCode();
  await look("the card desk, by a code");
  await page.goto("#/nowhere");
  await expect(page.getByRole("heading", { level: 1, name: "There is no such page" })).toBeVisible();
  await look("an address that leads nowhere");
  await page.goto("#/plan/gone.plan.json");
  await expect(page.getByRole("heading", { level: 1, name: "There is no such plan here" })).toBeVisible();
  await expect(page.getByRole("main").getByRole("button")).toHaveCount(0);
  await look("a plan that is not there");
  await page.goto("#/");
  await nothingLeft(page, look);
}

/** The bench once everything on it is deleted. */
async function nothingLeft(page: Page, look: Look): Promise<void> {
  await page.getByRole("button", { name: "Delete everything" }).click();
  const asks = page.getByRole("alertdialog");
  await expect(asks).toBeVisible();
  await look("the question before everything is deleted");
  await asks.getByRole("button", { name: /^Delete all \d+ documents$/ }).click();
  await expect(page.getByRole("heading", { level: 2, name: "Start with a rocket and a motor" })).toBeVisible();
  await expect(page.getByRole("article")).toHaveCount(0);
  await look("the bench without anything on it");
}

/** The plan's sheet in its states, the label and the pad. */
async function theSheet(page: Page, plan: PlanPage, look: Look): Promise<void> {
  const titles = [
    "Rocket",
    "Motor",
    "Field & weather",
    "Delay",
    "Cut",
    "Packing",
    "Checks",
    "Prep",
    "Card",
    "Debrief",
  ] as const;
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

story("in every theme every screen can be read, heard and hit by everybody", async ({ bench, page }) => {
  const root = page.locator("html");
  for (const [word, theme] of [
    ["Dark", "dark"],
    ["Sunlight", "sun"],
    ["Light", "light"],
  ] as const) {
    await page.getByRole("button", { name: "Display" }).click();
    await page.getByRole("menuitemradio", { name: word, exact: true }).click();
    await expect(root).toHaveAttribute("data-theme", theme);
    await page.keyboard.press("Escape");
  }
  await everyScreen(page, bench, async (screen, least = TOUCH) => {
    await isAccessible(page, screen);
    await hasLargeTargets(page, screen, least);
    await fitsWidth(page, screen);
  });
});

story("where a screen breaks down, its page can be read and hit too", async ({ bench, page, guard }) => {
  guard.expects(/struck/);
  const sheet = bench.card(WORKED_EXAMPLE).getByRole("link", { name: WORKED_EXAMPLE, exact: true });
  const address = (await sheet.getAttribute("href")) ?? "";
  await page.evaluate(() => {
    const { toFixed } = Number.prototype;
    Number.prototype.toFixed = () => {
      throw new Error("struck");
    };
    addEventListener("whole again", () => {
      Number.prototype.toFixed = toFixed;
    });
  });
  // the bench may break down before, when the last odds come for its card
  await page.evaluate((hash) => location.assign(hash), address);
  await expect(page.getByRole("heading", { name: "Bench" })).toHaveCount(0);
  await expect(page.getByRole("button", { name: "Export everything" })).toBeVisible();
  await page.evaluate(() => dispatchEvent(new Event("whole again")));
  await isAccessible(page, "the error screen");
  await hasLargeTargets(page, "the error screen", TOUCH);
});

const DAMAGED = { path: "struck.plan.json", kind: "plan", name: "Struck plan", raw: 7, record: 1 };

story("what is said where something is damaged or not kept can be read in every theme", async ({ bench, page }) => {
  const look: Look = async (screen) => {
    await isAccessible(page, screen);
    await hasLargeTargets(page, screen, TOUCH);
    await fitsWidth(page, screen);
  };
  await putDocuments(page, [DAMAGED]);
  await page.reload();
  await expect(bench.card(DAMAGED.name)).toContainText("cannot be read");
  await look("a damaged plan among the others");
  await bench.card(DAMAGED.name).getByRole("link").click();
  await expect(page.getByRole("heading", { level: 1, name: DAMAGED.name })).toBeVisible();
  await look("the page of a damaged plan");
  await page.goto("#/");
  await bench.isOpen();
  await writesGo(page, "quota");
  await bench.newPlan();
  await expect(page.getByRole("alert")).toContainText("No room left on this device.");
  await look("a plan that cannot be kept");
});

story("on the narrowest phone nothing runs out of the page @desk", async ({ bench, page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await everyScreen(page, bench, (screen) => fitsWidth(page, screen));
});
