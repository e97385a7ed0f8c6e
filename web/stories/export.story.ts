import { documentsOf } from "./given/command-line.js";
import { BenchPage, WORKED_EXAMPLE } from "./pages/bench.js";
import { field, words } from "./pages/sheet.js";
import { expect, story } from "./story.js";

const OWN_PLAN = "Own plan, fourth flight";
const OWN_ROCKET = "Own rocket";
const MISTYPED = "18o mm";

story("Everything is exported, the browser is wiped, and the import brings all of it back", async ({ bench, page }) => {
  await story.step("a plan and a rocket of one's own, one length not yet right", async () => {
    await bench.actOnPlan(WORKED_EXAMPLE, "Duplicate");
    await bench.actOnPlan(`${WORKED_EXAMPLE} 2`, "Rename");
    await page.getByRole("textbox", { name: "Name" }).fill(OWN_PLAN);
    await page.getByRole("button", { name: "Keep this name" }).click();
    const plan = await bench.openPlan(OWN_PLAN);
    await plan.answerAfter(async () => field(await plan.section("Field & weather"), "Wind").fill("3.5 m/s"));
    await plan.goToBench();
    const rocket = await bench.openDocument("Rockets", "Demo rocket 54");
    await page.getByRole("button", { name: "Duplicate" }).click();
    await rocket.name(OWN_ROCKET);
    await field(rocket.main, "Length").fill(MISTYPED);
    await rocket.back();
    await rocket.back();
  });

  const decided = await bench.settledCard(OWN_PLAN);
  const text = await bench.exportEverything();
  expect(documentsOf(text).size).toBeGreaterThan(2);

  await story.step("the browser forgets everything", async () => {
    const { origin } = new URL(page.url());
    const session = await page.context().newCDPSession(page);
    await page.goto("about:blank");
    await session.send("Storage.clearDataForOrigin", { origin: origin, storageTypes: "all" });
    await bench.open();
    await expect(bench.card(WORKED_EXAMPLE)).toBeVisible();
    await expect(bench.card(OWN_PLAN)).toHaveCount(0);
  });

  await story.step("the import brings it back", async () => {
    const place = await bench.goToImport();
    await place.file("bench.json", text);
    await expect(place.report).toContainText("Taken in: 2 documents");
    await place.goToBench();
  });

  await story.step("the documents are the same to the letter, and the decision too", async () => {
    expect(await bench.exportEverything()).toBe(text);
    await expect.poll(() => words(bench.card(OWN_PLAN))).toBe(decided);
    const rocket = await bench.openDocument("Rockets", OWN_ROCKET);
    await expect(field(rocket.main, "Length")).toHaveValue(MISTYPED);
  });
});

story("Everything is deleted by hand: undo brings it back, and after that the export does", async ({ bench, page }) => {
  await expect(bench.card(WORKED_EXAMPLE)).toContainText(/Cut to \d/);
  const decided = await bench.settledCard(WORKED_EXAMPLE);
  const text = await bench.exportEverything();
  const deleteEverything = async (): Promise<void> => {
    await page.getByRole("button", { name: "Delete everything" }).click();
    const asks = page.getByRole("alertdialog");
    await expect(asks).toContainText("the readings of every cut with them");
    await asks.getByRole("button", { name: `Delete all ${documentsOf(text).size} documents` }).click();
    await expect(bench.cards()).toHaveCount(0);
  };

  await deleteEverything();
  await page.getByRole("button", { name: "Undo: everything deleted" }).click();
  await expect(bench.card(WORKED_EXAMPLE)).toBeVisible();
  expect(await bench.exportEverything()).toBe(text);

  await story.step("deleted and loaded again it stays gone, until it is imported", async () => {
    const other = new BenchPage(await page.context().newPage());
    await other.open();
    await expect(other.card(WORKED_EXAMPLE)).toBeVisible();
    await deleteEverything();
    await expect(other.cards(), "another tab hears of it once it is kept").toHaveCount(0);
    await page.reload();
    await bench.isOpen();
    await expect(bench.cards()).toHaveCount(0);
    const place = await bench.goToImport();
    await place.file("bench.json", text);
    await expect(place.report).toContainText("Taken in");
    await place.goToBench();
    expect(await bench.exportEverything()).toBe(text);
    await expect.poll(() => words(bench.card(WORKED_EXAMPLE))).toBe(decided);
  });
});

story(
  "A back-up that breaks off is told as one, puts nothing on the bench, and a text that was pasted stays in its field",
  async ({ bench, page }) => {
    const text = await bench.exportEverything();
    const half = text.slice(0, text.length / 2);
    const line = half.split("\n").length;
    const place = await bench.goToImport();
    await place.file("a.json", half);
    await expect(place.report).toContainText(
      `Nothing could be taken in. The back-up a.json breaks off at line ${line}: none of its documents came in.`,
    );
    await expect(place.report.getByRole("heading", { name: "New on the bench" })).toHaveCount(0);
    await place.paste(half);
    await expect(place.report).toContainText("The back-up document.json breaks off");
    await expect(page.getByRole("textbox", { name: /^What the code on a bag's label says/ })).toHaveValue(half);
    await place.goToBench();
    expect(await bench.exportEverything()).toBe(text);
  },
);
