import { readFile } from "node:fs/promises";
import { keptDocuments, putDocuments, writesGo } from "./given/database.js";
import { BenchPage, WORKED_EXAMPLE } from "./pages/bench.js";
import { PlanPage } from "./pages/plan.js";
import { field } from "./pages/sheet.js";
import { expect, story } from "./story.js";

for (const { fault, title, lead, advice } of [
  {
    fault: "quota",
    title: "a device without room left says so, and what was typed is exported and kept later",
    lead: "No room left on this device.",
    advice: "Export now, then make room on the device and try again.",
  },
  {
    fault: "abort",
    title: "a write that the browser breaks off is told and made good",
    lead: "The browser broke the writing off.",
    advice: "Try again; if it happens once more, export first.",
  },
] as const) {
  story(title, async ({ bench, page }) => {
    const plan = await bench.openPlan(WORKED_EXAMPLE);
    const wind = field(await plan.section("Field & weather"), "Wind");
    const notice = page.getByRole("alert");
    await writesGo(page, fault);
    const changed = await plan.answerAfter(() => wind.fill("6.5 m/s"));
    await expect(notice).toContainText(lead);
    await expect(notice).toContainText(`Your last change, in ${WORKED_EXAMPLE}, is still in memory`);
    await expect(notice).toContainText(advice);

    await story.step("what is not kept is in the exported file", async () => {
      const saved = page.waitForEvent("download");
      await notice.getByRole("button", { name: "Export everything" }).click();
      expect(await readFile(await (await saved).path(), "utf8")).toContain('"6.5 m/s"');
    });

    await story.step("once it can be written, it is, and it is there after the page was closed", async () => {
      await writesGo(page, "none");
      await notice.getByRole("button", { name: "Try again" }).click();
      await expect(notice).toBeHidden();
      const again = await page.context().newPage();
      await again.goto(page.url());
      const same = new PlanPage(again);
      await expect(field(await same.section("Field & weather"), "Wind")).toHaveValue("6.5 m/s");
      expect(await same.settled()).toBe(changed);
    });
  });
}

story("a browser that keeps nothing says so, and the bench works all the same", async ({ page }) => {
  await page.addInitScript(() => Object.defineProperty(window, "indexedDB", { value: undefined }));
  const bench = new BenchPage(page);
  await bench.open();
  const notice = page.getByRole("alert");
  await expect(notice).toContainText("This browser keeps nothing here.");
  await expect(notice).toContainText("Everything works until you close the page; export before you do.");
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.answerAfter(async () => {
    await field(await plan.section("Field & weather"), "Wind").fill("7 m/s");
  });
  const saved = page.waitForEvent("download");
  await notice.getByRole("button", { name: "Export everything" }).click();
  expect(await readFile(await (await saved).path(), "utf8")).toContain('"7 m/s"');
});

for (const { end, title } of [
  { end: "crash", title: "a page that is killed in the middle of typing loses no more than the last key" },
  { end: "close", title: "a page that is closed in the middle of typing loses no more than the last key" },
] as const) {
  story(title, async ({ bench, page, guard }) => {
    const plan = await bench.openPlan(WORKED_EXAMPLE);
    await plan.settled();
    const wind = field(await plan.section("Field & weather"), "Wind");
    const address = page.url();
    const devtools = await page.context().newCDPSession(page);
    const again = await page.context().newPage();
    await page.bringToFront();
    await wind.selectText();

    await story.step("key comes after key, and the end comes right after the last one", async () => {
      await page.keyboard.type("4.25 m/s");
      if (end === "close") return page.close();
      guard.expects(/the page crashed/);
      const crashed = page.waitForEvent("crash");
      devtools.send("Page.crash").catch(() => undefined);
      await crashed;
    });

    await story.step("opened again, it has what was typed and decides on it", async () => {
      await again.goto(address);
      const same = new PlanPage(again);
      const there = field(await same.section("Field & weather"), "Wind");
      await expect(there).toHaveValue(/^4\.25 m\/s?$/);
      await there.fill("4.25 m/s");
      await same.settled();
      await expect(same.answer).not.toContainText("With the last right value of");
    });
  });
}

const rubbish = [
  { path: "struck.plan.json", kind: "plan", name: "Struck plan", raw: 7, record: 1 },
  { path: "numbers.rocket.json", kind: "rocket", name: 5, raw: { kind: "rocket" }, drafts: "none", record: 1 },
  { path: 12, name: "Keyed by a number" },
  { path: ["a", "list"], raw: null },
];

story("what is damaged in the database is shown as damaged and kept; the rest works", async ({ bench, page }) => {
  await putDocuments(page, rubbish);
  await page.reload();
  const struck = bench.card("Struck plan");
  await expect(struck).toContainText("The plan is kept as it is; nothing was thrown away.");
  await expect(struck).toHaveCSS("border-left-style", "dashed");
  await expect(bench.page.getByRole("link", { name: /^Other documents 2/ })).toBeVisible();

  await story.step("the plan beside it works and can be changed", async () => {
    const plan = await bench.openPlan(WORKED_EXAMPLE);
    await plan.answerAfter(async () => {
      await field(await plan.section("Field & weather"), "Wind").fill("7 m/s");
    });
    await plan.goToBench();
  });

  await story.step("what is damaged is still in the database as it was, and in the export", async () => {
    const text = await bench.exportEverything();
    expect(text).toContain("Struck plan");
    const rows = await keptDocuments(page);
    for (const row of rubbish) expect(rows).toContainEqual(row);
  });
});
