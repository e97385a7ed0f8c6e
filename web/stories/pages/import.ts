import { expect, type Locator, type Page } from "@playwright/test";
import { BenchPage } from "./bench.js";

/** Where documents come in. */
export class ImportPage {
  readonly page: Page;
  /** What came of it. */
  readonly report: Locator;

  constructor(page: Page) {
    this.page = page;
    const heading = page.getByRole("heading", { level: 2, name: "What came of it" });
    this.report = page.locator("section").filter({ has: heading });
  }

  async isOpen(): Promise<void> {
    await expect(this.page.getByRole("heading", { level: 1, name: "Import" })).toBeVisible();
  }

  async paste(text: string): Promise<void> {
    await this.page.getByRole("textbox", { name: /^What the code on a bag's label says/ }).fill(text);
    await this.page.getByRole("button", { name: "Take this text in" }).click();
    await expect(this.report).toBeVisible();
  }

  async file(name: string, text: string, mimeType = "application/json"): Promise<void> {
    const chooser = this.page.waitForEvent("filechooser");
    await this.page.getByRole("button", { name: "Choose files" }).click();
    await (await chooser).setFiles({ name, mimeType, buffer: Buffer.from(text) });
    await expect(this.report).toBeVisible();
  }

  async goToBench(): Promise<BenchPage> {
    await this.page.getByRole("link", { name: "Bench", exact: true }).click();
    const bench = new BenchPage(this.page);
    await bench.isOpen();
    return bench;
  }
}
