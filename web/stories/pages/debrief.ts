import { expect, type Locator, type Page } from "@playwright/test";
import type { PlanPage } from "./plan.js";
import { beginning, pick, words } from "./sheet.js";

/** Longest that a debrief may take on a machine that has other work [ms]. */
const PATIENCE = 240_000;

/** The last section of a plan: a flight's log, what it says, what it teaches. */
export class DebriefPart {
  readonly page: Page;
  readonly section: Locator;
  /** The slider by which an event is moved. */
  readonly handle: Locator;

  private constructor(page: Page, section: Locator) {
    this.page = page;
    this.section = section;
    this.handle = section.getByRole("slider");
  }

  static async of(plan: PlanPage): Promise<DebriefPart> {
    return new DebriefPart(plan.page, await plan.section("Debrief"));
  }

  /** Gives the app a log; waits until its columns are shown. */
  async choose(name: string, text: string): Promise<void> {
    const button = this.section.getByRole("button", { name: "Choose the altimeter's log" });
    // pictures that still come in above may move the button from under the pointer
    await expect(async () => {
      const chooser = this.page.waitForEvent("filechooser", { timeout: 5000 });
      const [given] = await Promise.all([chooser, button.click()]);
      await given.setFiles({ name, mimeType: "text/csv", buffer: Buffer.from(text) });
    }).toPass();
    await expect(this.section.getByRole("heading", { name: beginning(name) })).toBeVisible();
    await expect(this.shown).toHaveAttribute("aria-busy", "false");
  }

  /** Begins to say what was seen of a flight that has no log. */
  async sayWithoutLog(): Promise<void> {
    const button = this.section.getByRole("button", { name: "No log: say what was seen" });
    // as above: a press whose button moves away is none
    await expect(async () => {
      await button.click({ timeout: 5000 });
      await expect(button).toBeHidden({ timeout: 3000 });
    }).toPass();
  }

  /** What a file holds, before it is taken: on the page of a phone as it is held, and once it was turned. */
  get shown(): Locator {
    return this.page
      .locator("section")
      .filter({ has: this.page.getByRole("button", { name: "Leave it" }) })
      .last();
  }

  /** Chooses a word beside a column. */
  async set(label: string, word: string): Promise<void> {
    const field = this.shown.getByRole("button", { name: new RegExp(`${label.replace(/[()]/g, "\\$&")}$`) });
    await field.click();
    await this.page.getByRole("option", { name: word, exact: true }).click();
    await expect(this.shown).toHaveAttribute("aria-busy", "false");
  }

  async take(): Promise<void> {
    await this.shown.getByRole("button", { name: /take this log$/i }).click();
    await expect(this.section.getByRole("button", { name: "Take the log away" })).toBeVisible();
  }

  /** Waits until all draws of the debrief are flown. */
  async settled(): Promise<void> {
    await expect(this.section.getByText("The debrief is ready.")).toBeAttached({ timeout: PATIENCE });
    await expect(this.learned).toHaveAttribute("aria-busy", "false", { timeout: PATIENCE });
  }

  get learned(): Locator {
    const heading = this.page.getByRole("heading", { level: 3, name: "What was learned" });
    return this.section.locator("section").filter({ has: heading }).last();
  }

  /** What happened, in a sentence. */
  get head(): Locator {
    return this.section.locator(".debrief-head");
  }

  event(word: string): Locator {
    const table = this.section.getByRole("table", { name: /^Events/ });
    return table.getByRole("row").filter({ has: this.page.getByRole("rowheader", { name: beginning(word) }) });
  }

  /** Seconds after lift-off at which an event stands. */
  async timeOf(word: string): Promise<number> {
    const text = await words(this.event(word).getByRole("cell").nth(1));
    return Number(/-?[\d.]+/.exec(text)?.[0]);
  }

  async move(word: string): Promise<void> {
    await this.event(word)
      .getByRole("button", { name: beginning(word) })
      .click();
    await expect(this.handle).toBeVisible();
  }

  /** Drags the handle sideways, by mouse or by finger. */
  async drag(by: number, touch: boolean): Promise<void> {
    await this.handle.scrollIntoViewIfNeeded();
    const box = await this.handle.boundingBox();
    if (box === null) throw new Error("the handle is not in view");
    // where a finger meets the handle and not a bar that stays in view over the page
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    if (!touch) {
      await this.page.mouse.move(x, y);
      await this.page.mouse.down();
      await this.page.mouse.move(x + by, y, { steps: 8 });
      await this.page.mouse.up();
      return;
    }
    const cdp = await this.page.context().newCDPSession(this.page);
    const send = (type: "touchStart" | "touchMove" | "touchEnd", touchPoints: { x: number; y: number }[]) =>
      cdp.send("Input.dispatchTouchEvent", { type, touchPoints });
    await send("touchStart", [{ x, y }]);
    for (let i = 1; i <= 8; i++) await send("touchMove", [{ x: x + (by * i) / 8, y }]);
    await send("touchEnd", []);
    await cdp.detach();
  }

  async keep(): Promise<void> {
    await this.section.getByRole("button", { name: "Accept the events and keep what was found" }).click();
    await expect(this.section.getByText("What was found is kept with the flight.")).toBeVisible({ timeout: PATIENCE });
    await this.settled();
  }

  async pick(label: string, word: string): Promise<void> {
    await pick(this.section, label, word);
  }
}
