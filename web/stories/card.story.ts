import { readFile } from "node:fs/promises";
import type { Locator } from "@playwright/test";
import { closeUp, codeIn } from "./given/camera.js";
import { close, printedText } from "./given/printed.js";
import { WORKED_EXAMPLE } from "./pages/bench.js";
import type { PlanPage } from "./pages/plan.js";
import { plain, words } from "./pages/sheet.js";
import { expect, story } from "./story.js";

/** Sheets of paper in points of 1/72 inch: A5 and A4 by ISO 216, Letter 8.5 by 11 inch. */
const sheets = [
  ["A5", 148 / 25.4, 210 / 25.4],
  ["A4", 210 / 25.4, 297 / 25.4],
  ["Letter", 8.5, 11],
] as const;

/** What the sheet's answer says of the delay to cut. */
async function figuresOf(plan: PlanPage) {
  const [lead = ""] = (await plan.settled()).split(". ");
  const odds = (await words(plan.odds)).replace(" clean, how exact", "");
  const said = await words(plan.answer);
  const [, below = "", above = ""] = /open below (\S+ m\/s).*? above (\S+ m)\b/.exec(said) ?? [];
  const [, holds = ""] = /holds ((?:over )?\S+ %)/.exec(said) ?? [];
  for (const figure of [odds, below, above, holds]) expect(figure).toMatch(/\d/);
  return { lead, odds, below, above, holds };
}

async function cardOf(plan: PlanPage): Promise<{ readonly section: Locator; readonly card: Locator }> {
  const section = await plan.section("Card");
  await section.scrollIntoViewIfNeeded();
  const card = section.getByRole("region", { name: "Flight card" });
  await expect(card).toContainText(WORKED_EXAMPLE);
  return { section, card };
}

story("The card prints alone on one page, with the figures of the answer @desk", async ({ bench, page }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  const { lead, odds, below, above, holds } = await figuresOf(plan);
  const { section } = await cardOf(plan);
  await page.evaluate(() => {
    globalThis.print = () => undefined;
  });
  for (const [paper, width, height] of sheets) {
    await section.getByText(paper, { exact: true }).click();
    await section.getByRole("button", { name: "Print the card" }).click();
    await expect(page.locator("html[data-print]")).toHaveCount(1);
    const printed = await printedText(await page.pdf({ preferCSSPageSize: true }));
    expect(printed.pages, `pages on ${paper}`).toBe(1);
    expect(Math.abs(printed.width - 72 * width)).toBeLessThan(1);
    expect(Math.abs(printed.height - 72 * height)).toBeLessThan(1);
    const { text } = printed;
    expect(text.startsWith(close("Flight card"))).toBe(true);
    expect(text).toContain(close(lead));
    expect(text).toContain(close(`${odds}${holds}${below}${above}`));
    for (const other of ["Settings", "Undo", "Print", "Savethis"]) expect(text).not.toContain(other);
  }
});

story(
  "The card's code brings the plan with the same figures to the card desk, and nothing else",
  async ({ bench, page, context, narrow }) => {
    const plan = await bench.openPlan(WORKED_EXAMPLE);
    const { lead, odds, below, above, holds } = await figuresOf(plan);
    const { section, card } = await cardOf(plan);
    if (narrow) await section.getByRole("button", { name: "Show it as large as it prints" }).click();
    const { picture, text } = await story.step("a camera reads it", async () => {
      let read: { readonly picture: Buffer; readonly text: string } = { picture: Buffer.of(), text: "" };
      await expect(async () => {
        const seen = await closeUp(page, card.getByRole("img", { name: "QR code of this plan" }));
        read = { picture: seen, text: await codeIn(page, seen) };
        expect(read.text).toMatch(/^DELAYWRIGHT1:.*:$/);
      }).toPass();
      return read;
    });

    await story.step("it can be copied as text", async () => {
      await context.grantPermissions(["clipboard-read", "clipboard-write"]);
      await section.getByRole("button", { name: "Copy the code as text" }).click();
      await expect(section.getByText("Copied.")).toBeVisible();
      expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(text);
    });

    await story.step("the card is saved as one file, without script and without anything from elsewhere", async () => {
      const saved = page.waitForEvent("download");
      await section.getByRole("button", { name: "Save it as a file" }).click();
      const file = await saved;
      expect(file.suggestedFilename()).toMatch(/\.card\.html$/);
      const html = await readFile(await file.path(), "utf8");
      expect(html).toContain("<!doctype html>");
      expect(html).not.toMatch(/<script|src=|href=|url\(/);
      expect(close(plain(html.replace(/<[^>]*>/g, "")))).toContain(close(odds));
    });

    await plan.goToBench();
    const before = await bench.exportEverything();
    const desk = await bench.goToCardDesk();
    await desk.byCode();

    await story.step("a photo of it", async () => {
      await desk.photo(picture);
      await expect(desk.card).toContainText(`Read: ${WORKED_EXAMPLE}.`);
      await desk.settled();
      const said = await desk.said();
      expect(said).toContain(lead);
      expect((await words(desk.odds)).replace(" clean, how exact", "")).toBe(odds);
      expect(said).toContain(`below ${below} and above ${above}`);
      expect(said).toContain(`holds ${holds}`);
    });

    await story.step("its text, and what is no code", async () => {
      await desk.paste("DELAYWRIGHT1:NOT A CODE:");
      await expect(desk.card.getByRole("alert")).toContainText("read the code again");
      await desk.paste(text);
      await expect(desk.card).toContainText(`Read: ${WORKED_EXAMPLE}.`);
      await desk.settled();
      expect(await desk.said()).toContain(lead);
    });

    await story.step("nothing was kept", async () => {
      await page.getByRole("link", { name: "Bench", exact: true }).click();
      await bench.isOpen();
      const after = JSON.parse(await bench.exportEverything());
      expect(after.documents).toEqual(JSON.parse(before).documents);
    });
  },
);
