import { cautions } from "@delaywright/documents";
import { close, printedText } from "./given/printed.js";
import { WORKED_EXAMPLE } from "./pages/bench.js";
import { words } from "./pages/sheet.js";
import { expect, story } from "./story.js";

/** Widths of the papers in points of 1/72 inch: 210 mm by ISO 216, and 8.5 inch. */
const papers = [
  ["A4", (210 / 25.4) * 72],
  ["Letter", 8.5 * 72],
] as const;

for (const [format, width] of papers) {
  story(
    `The plan prints on ${format} with its figures and cautions, and without what only a screen needs @desk`,
    async ({ bench, page }) => {
      const plan = await bench.openPlan(WORKED_EXAMPLE);
      await plan.settled();
      const rows = await plan.settingRows();
      const odds = close(await words(plan.odds)).replace("clean,howexact", "");
      const lead = close((await plan.settled()).replace(/\. .*$/, ""));

      const printed = await printedText(await page.pdf({ format, preferCSSPageSize: false }));
      expect(Math.abs(printed.width - width)).toBeLessThan(1);
      const { text } = printed;
      expect(text).toContain(close(WORKED_EXAMPLE));
      expect(text).toContain(lead);
      expect(text).toContain(odds);
      for (const { clean, holds, half, below, above } of rows)
        expect(text).toContain(close(`${clean}${holds}${half}${below}${above}`));
      for (const caution of [...cautions.cutting, ...cautions.authority]) expect(text).toContain(close(caution));
      for (const control of ["Undo", "Redo", "Padview", "Sunlight", "Recordthisreading", "Next:"])
        expect(text).not.toContain(control);
    },
  );
}

story("Who prints while the sheet still fills gets all of it @desk", async ({ bench }) => {
  await expect(bench.card(WORKED_EXAMPLE)).toContainText(/Cut to \d/);
  const link = bench.card(WORKED_EXAMPLE).getByRole("link", { name: WORKED_EXAMPLE, exact: true });
  const drawn = await link.evaluate(
    (plan: HTMLElement) =>
      new Promise<readonly [boolean, boolean]>((resolve) => {
        const isThere = (id: string): boolean => document.getElementById(id) !== null;
        const filling = new MutationObserver(() => {
          if (!isThere("rocket")) return;
          filling.disconnect();
          const before = isThere("debrief");
          setTimeout(() => {
            dispatchEvent(new Event("beforeprint"));
            resolve([before, isThere("debrief")]);
          });
        });
        filling.observe(document.body, { subtree: true, childList: true });
        plan.click();
      }),
  );
  expect(drawn).toEqual([false, true]);
});
