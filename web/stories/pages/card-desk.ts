import { expect, type Locator, type Page } from "@playwright/test";
import { words } from "./sheet.js";

/** Longest that all draws may take on a machine that has other work [ms]. */
const PATIENCE = 45_000;

/** A look at another flyer's card. */
export class CardDeskPage {
  readonly page: Page;
  readonly card: Locator;
  readonly answer: Locator;
  readonly keep: Locator;

  constructor(page: Page) {
    this.page = page;
    this.card = page.getByRole("region", { name: "The card" });
    this.answer = page.getByRole("region", { name: "What it comes to" });
    this.keep = this.answer.getByRole("button", { name: "Keep as a plan" });
  }

  async isOpen(): Promise<void> {
    await expect(this.page.getByRole("heading", { level: 1, name: "Card desk" })).toBeVisible();
  }

  /** Waits until all draws are flown. */
  async settled(): Promise<void> {
    await expect(this.answer.getByText("The answer has settled.")).toHaveCount(1, { timeout: PATIENCE });
  }

  /** The figure that stands before "clean". */
  get odds(): Locator {
    return this.answer.getByRole("button", { name: /clean, how exact$/ });
  }

  async byCode(): Promise<void> {
    await this.card.getByText("by its code", { exact: true }).click();
  }

  async paste(text: string): Promise<void> {
    await this.card.getByRole("textbox", { name: "Or paste what the code says" }).fill(text);
    await this.card.getByRole("button", { name: "Read this text" }).click();
  }

  /** Gives the page a photo. */
  async photo(picture: Buffer): Promise<void> {
    const chooser = this.page.waitForEvent("filechooser");
    await this.card.getByRole("button", { name: "Choose a photo of the code" }).click();
    await (await chooser).setFiles({ name: "card.png", mimeType: "image/png", buffer: picture });
  }

  /** Takes the camera out. */
  async look(): Promise<void> {
    await this.card.getByRole("button", { name: "Look with the camera" }).click();
  }

  said(): Promise<string> {
    return words(this.answer);
  }
}
