import { expect, type Locator, type Page } from "@playwright/test";
import { PlanPage } from "./plan.js";
import { beginning, field, pick, words } from "./sheet.js";

/** Longest that a library may take on a machine that has other work [ms]. */
const PATIENCE = 90_000;

/** A motor's row, read from its sentences; what is not said is null. */
export interface Row {
  readonly name: string;
  readonly lead: string;
  readonly median: number | null;
  readonly most: number | null;
}

/** The motors of the library against a plan. */
export class ShortlistPage {
  readonly page: Page;
  readonly main: Locator;
  readonly progress: Locator;

  constructor(page: Page) {
    this.page = page;
    this.main = page.getByRole("main");
    this.progress = page.getByRole("progressbar", { name: "Motors judged" });
  }

  async isOpen(): Promise<void> {
    await expect(this.page.getByRole("heading", { level: 1, name: "Shortlist of my motors" })).toBeVisible();
  }

  /** Waits until every motor is judged; gives what the page says first. */
  async judged(): Promise<string> {
    await expect(this.main).toHaveAttribute("aria-busy", "false", { timeout: PATIENCE });
    return words(this.main.getByText(/ (not refused so far|(is|are) left for )/).first());
  }

  async bringDemoMotors(): Promise<void> {
    const demo = this.page.getByRole("region", { name: "Motors to try it out with" });
    await demo.getByRole("button", { name: "Bring the demo motors" }).click();
    await expect(demo.getByRole("status")).toHaveText(/^48 invented motor types are on the bench now/);
  }

  async aimAt(aim: string, height?: string): Promise<void> {
    await pick(this.main, "What comes first", aim);
    if (height !== undefined) await field(this.main, "Height to reach").fill(height);
  }

  section(title: string): Locator {
    const heading = this.page.getByRole("heading", { level: 2, name: beginning(title) });
    return this.main.locator("section").filter({ has: heading });
  }

  row(name: string): Locator {
    const named = this.page.getByRole("heading", { level: 3, name: beginning(`${name} `) });
    return this.section("Not refused").getByRole("listitem").filter({ has: named });
  }

  /** Rows in the order in which they stand. */
  async rows(): Promise<readonly Row[]> {
    const found: Row[] = [];
    for (const row of await this.section("Not refused").getByRole("listitem").all()) {
      const text = await words(row);
      const [, median, most] = /Top (\d+) m; 95 % stay below (\d+) m/.exec(text) ?? [];
      found.push({
        name: /^Demo \w+/.exec(text)?.[0] ?? "",
        lead: /((Cut to|Leave it at) .+? holds (over )?[\d.]+ %)/.exec(text)?.[0] ?? "",
        median: median === undefined ? null : Number(median),
        most: most === undefined ? null : Number(most),
      });
    }
    return found;
  }

  /** What a reason of refusal says, its head first. */
  refusal(reason: string): Locator {
    const head = this.page.getByRole("heading", { level: 3, name: beginning(reason) });
    return this.section("Refused").getByRole("listitem").filter({ has: head });
  }

  async putIntoPlan(name: string): Promise<void> {
    await this.row(name).getByRole("button", { name: "Put it into the plan" }).click();
    await expect(this.row(name).getByRole("link", { name: "In the plan: open it" })).toBeFocused();
  }

  async openPlanOf(name: string): Promise<PlanPage> {
    await this.row(name).getByRole("link", { name: "In the plan: open it" }).click();
    return new PlanPage(this.page);
  }

  async beginPlanWith(name: string): Promise<PlanPage> {
    await this.row(name).getByRole("button", { name: "New plan with it" }).click();
    return new PlanPage(this.page);
  }
}
