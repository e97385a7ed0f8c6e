import { isAccessible } from "./given/accessible.js";
import { close, printedText } from "./given/printed.js";
import { WORKED_EXAMPLE } from "./pages/bench.js";
import { PrepSheet } from "./pages/prep.js";
import { field, words } from "./pages/sheet.js";
import { expect, story } from "./story.js";

story("A prep sheet is signed step by step, survives a reload halfway, and is finished", async ({ bench, page }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  await plan.cutAsPlanned("Bag 4", "22.2 mm");

  let sheet = await PrepSheet.of(plan);
  await sheet.section.getByRole("button", { name: "Begin a flight" }).click();
  await field(sheet.section, "Your initials").fill("AB");
  const titles = await sheet.titles();
  expect(titles.length).toBeGreaterThan(20);
  const half = Math.floor(titles.length / 2);

  const signed = await story.step("the first half", async () => {
    const done: string[] = [];
    while (done.length < half) done.push(await sheet.signNext());
    return done;
  });

  await story.step("the page is loaded anew: what was signed is still there", async () => {
    const before = await sheet.signed();
    await page.reload();
    await plan.settled();
    sheet = await PrepSheet.of(plan);
    await expect(sheet.signatures).toHaveCount(half);
    expect(await sheet.signed()).toEqual(before);
  });

  await story.step("the bench says how far it is", async () => {
    await plan.goToBench();
    const card = bench.card(WORKED_EXAMPLE);
    await expect(card).toContainText(`Prep: ${half} of ${titles.length} signed; next: `);
    await bench.openPlan(WORKED_EXAMPLE);
    await plan.settled();
  });

  await story.step("the pad view has the next step, and signs it", async () => {
    const pad = await plan.goToPad();
    const next = page.getByRole("region", { name: "Next prep step" });
    await expect(next).toContainText(`${half} of ${titles.length} signed`);
    const title = await words(next.getByRole("heading", { level: 3 }));
    await next.getByRole("button", { name: `Sign: ${title}` }).click();
    await expect(next).toContainText(`${half + 1} of ${titles.length} signed`);
    signed.push(title);
    await pad.backToPlan();
    await plan.settled();
  });

  await story.step("to the end", async () => {
    sheet = await PrepSheet.of(plan);
    while (signed.length < titles.length) signed.push(await sheet.signNext());
    expect([...signed].sort()).toEqual([...titles].sort());
    await expect(sheet.section.or(page.locator("#prep")).first()).toContainText("flown, and all signed");
    await expect(sheet.toSign).toHaveCount(0);
  });

  // since the reload nothing was done but signing, and undo passes signatures over
  await expect(page.getByRole("button", { name: /^Undo: / })).toHaveCount(0);
});

story("The prep sheet prints alone, with the figures of the answer and room to sign @desk", async ({ bench, page }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  const answer = await plan.settled();
  const [lead = "", detail = ""] = answer.split(". ");
  const sheet = await PrepSheet.of(plan);
  const titles = await sheet.titles();
  await page.evaluate(() => {
    globalThis.print = () => document.documentElement.setAttribute("data-printed", "");
  });
  for (const format of ["A4", "Letter"] as const) {
    await sheet.section.getByRole("button", { name: "Print the prep sheet" }).click();
    await expect(page.locator("html[data-print]")).toHaveCount(1);
    const { text } = await printedText(await page.pdf({ format, preferCSSPageSize: false }));
    expect(text).toContain(close(WORKED_EXAMPLE));
    for (const title of titles) expect(text).toContain(close(title));
    // the very cut of the answer: Cut to 9 s, end A with the ring, 4.0 mm
    expect(text).toContain(close(lead));
    expect(text).toContain(close((detail.split(", ").at(-1) ?? "").replace(/\.$/, "")));
    expect(text).toContain(close("If it does not light"));
    expect(text).toContain("______");
    for (const other of ["Takeback", "9in10open", "Readjustnow", "Undo"]) expect(text).not.toContain(other);
  }
  await expect(page.locator("html[data-print]")).toHaveCount(0);
});

story(
  "Before a flight is begun the steps are read over the width of the sheet, in their order @desk",
  async ({ bench, page }) => {
    const plan = await bench.openPlan(WORKED_EXAMPLE);
    await plan.settled();
    const sheet = await PrepSheet.of(plan);
    await expect.poll(() => sheet.steps.count()).toBeGreaterThan(20);
    const places = await sheet.steps.evaluateAll((steps) => steps.map((each) => each.getBoundingClientRect().toJSON()));
    const columns = [...new Set(places.map(({ left }) => left))];
    expect(columns.length).toBeGreaterThan(1);
    for (const left of columns) {
      const own = places.filter((place) => place.left === left);
      expect(Math.abs(own.length - places.length / columns.length), "about as many in each").toBeLessThan(6);
      const tops: number[] = own.map(({ top }) => top);
      expect(tops, "down each column").toEqual([...tops].sort((a, b) => a - b));
    }
    expect(columns, "one column after the other").toEqual([...columns].sort((a, b) => a - b));
    await isAccessible(page, "the steps in columns");

    await story.step("begun, they are signed down one column beside the card", async () => {
      await sheet.section.getByRole("button", { name: "Begin a flight" }).click();
      await expect(sheet.section.getByRole("textbox", { name: "Your initials" })).toBeVisible();
      const begun = await sheet.steps.evaluateAll((steps) => steps.map((each) => each.getBoundingClientRect().left));
      expect(new Set(begun).size).toBe(1);
    });
  },
);
