import { expect, type Locator, type Page } from "@playwright/test";

/** The label for the bag of a motor in hand. */
export class LabelPage {
  readonly page: Page;
  readonly label: Locator;
  readonly code: Locator;

  constructor(page: Page) {
    this.page = page;
    this.label = page.getByRole("region", { name: "Label", exact: true });
    this.code = this.label.getByRole("img", { name: /^Code of / });
  }

  async isOpen(): Promise<void> {
    await expect(this.page.getByRole("heading", { level: 1, name: "Label for the bag" })).toBeVisible();
  }
}
