import { expect, type Locator, type Page } from "@playwright/test";
import type { PlanPage } from "./plan.js";
import { words } from "./sheet.js";

/** The prep sheet of a plan. */
export class PrepSheet {
  readonly page: Page;
  readonly section: Locator;

  private constructor(page: Page, section: Locator) {
    this.page = page;
    this.section = section;
  }

  static async of(plan: PlanPage): Promise<PrepSheet> {
    const sheet = new PrepSheet(plan.page, await plan.section("Prep"));
    const folded = sheet.section.getByRole("button", { name: /^Read all \d+ steps$/ });
    if (await folded.isVisible()) await folded.click();
    return sheet;
  }

  get steps(): Locator {
    return this.section.getByRole("listitem").filter({ has: this.page.getByRole("heading", { level: 4 }) });
  }

  get signatures(): Locator {
    return this.section.getByRole("button", { name: /^Take back: / });
  }

  get toSign(): Locator {
    return this.section.getByRole("button", { name: /^Sign: /, disabled: false });
  }

  /** Signs the first step that can be signed; gives its title. */
  async signNext(): Promise<string> {
    const before = await this.signatures.count();
    const button = this.toSign.first();
    const title = ((await button.getAttribute("aria-label")) ?? "").replace(/^Sign: /, "");
    await button.click();
    await expect(this.signatures).toHaveCount(before + 1);
    return title;
  }

  /** Titles of all steps, as they stand down the sheet. */
  async titles(): Promise<readonly string[]> {
    const found = await this.steps.getByRole("heading", { level: 4 }).allTextContents();
    return found.map((title) => title.replace(/, (open|signed|not yet|due again)$/, ""));
  }

  /** Initials and times of what is signed. */
  async signed(): Promise<readonly string[]> {
    return (await words(this.section)).match(/\bAB \d\d:\d\d\b/g) ?? [];
  }
}
