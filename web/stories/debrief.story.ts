import { readFileSync } from "node:fs";
import type { Page } from "@playwright/test";
import { fitsWidth, hasLargeTargets, isAccessible } from "./given/accessible.js";
import { WORKED_EXAMPLE } from "./pages/bench.js";
import { DebriefPart } from "./pages/debrief.js";
import { field, words } from "./pages/sheet.js";
import { expect, story } from "./story.js";

const TOUCH = 44;

/** Invented: a flight of the worked example, in feet at 20 Hz. */
const feet = readFileSync(new URL("../../cli/examples/debrief/first-flight.csv", import.meta.url), "utf8");
/** The same instrument, its heading wrong: it says metres where it means feet. */
const lying = (text: string): string => text.replace("Height (ft)", "Height (m)");
/** Another record of the same instrument: its clock runs on, and its last digit is another now and then. */
const other = feet.replace(
  /^([\d.]+),(-?\d+)/gm,
  (_, time: string, height: string) =>
    `${(Number(time) + 100).toFixed(2)},${Number(height) + (Number(time) % 0.3 < 0.1 ? 1 : 0)}`,
);

/** Turns a phone, or makes a desk as narrow as one, and back. */
async function turnAndBack(page: Page, look: () => Promise<void> = async () => undefined): Promise<void> {
  const size = page.viewportSize() ?? { width: 0, height: 0 };
  const turned = size.width > 600 ? { width: 390, height: 844 } : { width: size.height, height: size.width };
  for (const next of [turned, size]) {
    await page.setViewportSize(next);
    await look();
  }
}

story(
  "A log is read, its mapping put right, its events accepted, and the next odds change",
  async ({ bench, page }) => {
    const plan = await bench.openPlan(WORKED_EXAMPLE);
    const before = await plan.settled();
    const debrief = await DebriefPart.of(plan);

    await story.step("the file says metres and means feet: seen in the preview, and put right", async () => {
      await debrief.choose("first flight.csv", lying(feet));
      await expect(debrief.shown).toContainText("Time (s)");
      const wrong = Number(/top ([\d,]+)/.exec(await words(debrief.shown))?.[1]?.replace(",", ""));
      await isAccessible(page, "the columns of a log");
      await fitsWidth(page, "the columns of a log");
      await hasLargeTargets(page, "the columns of a log", TOUCH);
      await debrief.set("Unit of Height (m)", "ft");
      const right = Number(/top ([\d,]+)/.exec(await words(debrief.shown))?.[1]?.replace(",", ""));
      expect(right / wrong).toBeCloseTo(0.3048, 2);
    });

    await story.step("what was put right stays when the phone is turned, and turned back", async () => {
      const said = await words(debrief.shown);
      await turnAndBack(page, async () => {
        await expect(debrief.shown.getByRole("button", { name: /^ft Unit of Height/ })).toBeVisible();
        expect(await words(debrief.shown)).toBe(said);
      });
      await debrief.take();
    });

    await story.step("the flight is held against the prediction", async () => {
      await debrief.settled();
      for (const event of ["Lift-off", "Burnout", "Top", "Opening", "Landing"]) {
        const row = await words(debrief.event(event));
        expect(row, event).toMatch(/-?[\d.]+ s.*-?[\d.]+ s/);
      }
      await expect(debrief.section.getByRole("img", { name: "Prediction against flight" })).toBeVisible();
      await isAccessible(page, "a debrief");
      await fitsWidth(page, "a debrief");
      await hasLargeTargets(page, "a debrief", TOUCH);
    });

    await story.step("an event is moved by keys and put back by hand", async () => {
      const found = await debrief.timeOf("Burnout");
      await debrief.move("Burnout");
      await debrief.handle.focus();
      await page.keyboard.press("Shift+ArrowRight");
      await expect(debrief.event("Burnout")).toContainText("moved by you");
      await debrief.settled();
      expect(await debrief.timeOf("Burnout")).toBeGreaterThan(found);
      await debrief.section.getByRole("button", { name: "Back to where it was found" }).click();
      await expect(debrief.event("Burnout")).not.toContainText("moved by you");
      await debrief.settled();
      expect(await debrief.timeOf("Burnout")).toBeCloseTo(found, 2);
      const typed = field(debrief.section, "Seconds after lift-off");
      await typed.fill((found + 0.1).toFixed(2));
      await typed.press("Enter");
      await expect(debrief.event("Burnout")).toContainText("moved by you");
      await debrief.section.getByRole("button", { name: "Back to where it was found" }).click();
      await expect(debrief.event("Burnout")).not.toContainText("moved by you");
      await debrief.settled();
    });

    await story.step("the events are accepted; what was learned is told, and changes nothing by itself", async () => {
      const delay = field(debrief.section, "Delay as cut");
      await delay.fill("9 s");
      await debrief.keep();
      await expect(debrief.learned).toContainText(/Drag: .* reckoned/);
      await expect(debrief.learned).toContainText(
        /Delay: an element of this type set to 9\s+s now is reckoned to burn/,
      );
      await expect(debrief.learned).toContainText("Nothing changes a plan's odds until you say so.");
      expect(await plan.settled()).toBe(before);
    });

    await story.step("the plan reckons with it once told to; undo takes it back", async () => {
      const told = async (): Promise<void> => {
        await debrief.learned.getByRole("button", { name: "Reckon with it in this plan" }).click();
        await page.getByRole("alertdialog").getByRole("button", { name: "Reckon with it" }).click();
      };
      const after = await plan.answerAfter(told);
      expect(after).not.toBe(before);
      const back = await plan.answerAfter(() =>
        page.getByRole("button", { name: "Undo: reckoned with what was learned" }).click(),
      );
      expect(back).toBe(before);
      await plan.answerAfter(told);
      await expect(debrief.learned).toContainText("This plan reckons with it");
    });

    await story.step("the page is loaded anew: log, events and what was learned are there", async () => {
      await page.reload();
      const again = await plan.settled();
      expect(again).not.toBe(before);
      const kept = await DebriefPart.of(plan);
      await kept.settled();
      await expect(kept.section.getByText("What was found is kept with the flight.")).toBeVisible();
      await expect(kept.learned).toContainText("This plan reckons with it");
    });
  },
);

story(
  "The top's mark is dragged on the plot, stays in hand when the phone is turned, and is put back",
  async ({ bench, narrow, page }) => {
    const plan = await bench.openPlan(WORKED_EXAMPLE);
    await plan.settled();
    const debrief = await DebriefPart.of(plan);
    await debrief.choose("first flight.csv", feet);
    await debrief.take();
    await debrief.settled();
    await expect(debrief.section.getByText("9 in 10 predicted flights", { exact: true })).toBeVisible();
    const found = await debrief.timeOf("Top");
    await debrief.move("Top");
    const before = Number(await debrief.handle.getAttribute("aria-valuenow"));
    await debrief.drag(narrow ? 40 : 80, narrow);
    await expect(debrief.event("Top")).toContainText("moved by you");
    await debrief.settled();
    const moved = await debrief.timeOf("Top");
    expect(moved).toBeGreaterThan(found + 0.1);
    expect(Number(await debrief.handle.getAttribute("aria-valuenow"))).toBeCloseTo(moved, 1);
    expect(before).toBeCloseTo(found, 1);
    await expect(debrief.event("Top")).toContainText(`found at ${found.toFixed(2)}`);
    const whole = debrief.section.getByRole("button", { name: "Whole flight" });
    await expect(whole).toBeEnabled();
    await turnAndBack(page);
    await expect(debrief.handle).toBeVisible();
    await expect(whole).toBeEnabled();
    await expect(debrief.event("Top")).toContainText("moved by you");
    await debrief.section.getByRole("button", { name: "Back to where it was found" }).click();
    await expect(debrief.event("Top")).not.toContainText("moved by you");
    await debrief.settled();
    expect(await debrief.timeOf("Top")).toBeCloseTo(found, 2);
  },
);

story("The second log with the same headings needs no mapping, and the trends know both", async ({ bench, page }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  let debrief = await DebriefPart.of(plan);
  await debrief.choose("first flight.csv", lying(feet));
  await debrief.set("Unit of Height (m)", "ft");
  await debrief.take();
  await debrief.settled();
  await debrief.keep();

  await story.step("the next plan begins with what was learned", async () => {
    await debrief.learned.getByRole("button", { name: "Begin the next plan with it" }).click();
    await expect(plan.heading).toHaveText(`${WORKED_EXAMPLE}, next`);
    await plan.settled();
  });

  await story.step("its log is read as the first was", async () => {
    debrief = await DebriefPart.of(plan);
    await debrief.choose("second flight.csv", lying(other));
    await expect(debrief.shown).toContainText("Columns as in first flight");
    await expect(debrief.shown.getByRole("button", { name: "Take this log" })).toBeEnabled();
    const top = Number(/top ([\d,]+)/.exec(await words(debrief.shown))?.[1]?.replace(",", ""));
    expect(top).toBeLessThan(1000);
    await debrief.take();
    await debrief.settled();
    await debrief.keep();
    await expect(debrief.learned).toContainText(/2 flights of this rocket/);
  });

  await story.step("it is left out with a reason, and nothing is learned from it", async () => {
    await debrief.section.getByRole("button", { name: "Exclude this flight" }).click();
    const asks = page.getByRole("alertdialog");
    await field(asks, "Why").fill("two fins were gone");
    await asks.getByRole("button", { name: "Exclude it" }).click();
    await expect(debrief.section).toContainText("Nothing is learned from this flight. two fins were gone");
    await debrief.settled();
    await expect(debrief.learned).toContainText("you left it out");
  });

  await story.step("the library has both, with trends and what the odds were worth", async () => {
    await debrief.learned.getByRole("link", { name: "All flights and their trends" }).click();
    await expect(page.getByRole("heading", { level: 1, name: "Flights" })).toBeVisible();
    const flights = page.getByRole("table", { name: /^All flights/ });
    await expect(flights.getByRole("rowheader")).toHaveCount(2);
    await expect(flights).toContainText("left out: two fins were gone");
    await expect(page.getByRole("img", { name: /^Drag of Demo rocket 76/ })).toBeVisible();
    await expect(page.getByRole("main")).toContainText(/One flight proves nothing|prove little/);
    await isAccessible(page, "the flights");
    await fitsWidth(page, "the flights");
    await hasLargeTargets(page, "the flights", TOUCH);
  });
});

story("Without a log what was seen is written down, and teaches what it can", async ({ bench, page }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  const debrief = await DebriefPart.of(plan);
  await debrief.sayWithoutLog();
  await field(debrief.section, "Delay as cut").fill("9 s");
  await field(debrief.section, "Top").fill("560 m");
  await field(debrief.section, "Delay as heard, from burnout to the charge").fill("10.4 s");
  await debrief.settled();
  await expect(debrief.head).toContainText(/Set to 9\s+s, burnt 10\.4\s+s/);
  await debrief.section.getByRole("button", { name: "Keep what was seen" }).click();
  await expect(debrief.section.getByText("What was found is kept with the flight.")).toBeVisible();
  await page.reload();
  await plan.settled();
  await expect((await DebriefPart.of(plan)).section.getByText("What was found is kept with the flight.")).toBeVisible({
    timeout: 240_000,
  });
});

story("A file that is no log says what is wrong, and harms nothing", async ({ bench }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  const debrief = await DebriefPart.of(plan);
  for (const [name, text, says] of [
    ["empty.csv", "", /The file is empty/],
    ["binary.csv", "\u0000\u0001\u0002\u0000".repeat(300), /no text/],
    ["one.csv", `a\n${"1\n".repeat(200)}`, /one column/],
    ["still.csv", `t,h\n${Array.from({ length: 200 }, (_, i) => `${i},5`).join("\n")}`, /nothing flew/],
  ] as const) {
    await debrief.choose(name, text);
    await expect(debrief.shown).toContainText(says);
    await expect(debrief.shown.getByRole("button", { name: /take this log$/i })).toBeDisabled();
    await debrief.shown.getByRole("button", { name: "Leave it" }).click();
  }
  await expect(debrief.section.getByRole("button", { name: "Choose the altimeter's log" })).toBeVisible();
});
