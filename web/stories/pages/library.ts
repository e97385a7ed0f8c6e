import { readFile } from "node:fs/promises";
import { expect, type Locator, type Page } from "@playwright/test";

/** A library: its documents in a list. */
export class ShelfPage {
  readonly page: Page;
  readonly title: string;

  constructor(page: Page, title: string) {
    this.page = page;
    this.title = title;
  }

  async isOpen(): Promise<void> {
    await expect(this.page.getByRole("heading", { level: 1, name: this.title })).toBeVisible();
  }

  line(name: string): Locator {
    const named = this.page.getByText(name, { exact: true });
    return this.page.getByRole("main").getByRole("link").filter({ has: named });
  }

  async openDocument(name: string): Promise<DocumentPage> {
    await this.line(name).click();
    const document = new DocumentPage(this.page);
    await expect(document.heading).toHaveText(name);
    return document;
  }

  /** Makes a new document, for example a "rocket". */
  async make(what: string): Promise<DocumentPage> {
    await this.page.getByRole("button", { name: `New ${what}` }).click();
    const document = new DocumentPage(this.page);
    await expect(document.heading).toHaveText(`New ${what}`);
    return document;
  }
}

/** One document of a library. */
export class DocumentPage {
  readonly page: Page;
  readonly heading: Locator;
  readonly main: Locator;

  constructor(page: Page) {
    this.page = page;
    this.heading = page.getByRole("heading", { level: 1 });
    this.main = page.getByRole("main");
  }

  /** Gives the document a name. */
  async name(name: string): Promise<void> {
    await this.main.getByRole("textbox", { name: "Name", exact: true }).fill(name);
    await expect(this.heading).toHaveText(name);
  }

  /** Exports it; gives the text of the file. */
  async export(): Promise<string> {
    const saved = this.page.waitForEvent("download");
    await this.page.getByRole("button", { name: "Export" }).click();
    return readFile(await (await saved).path(), "utf8");
  }

  /** Asks to delete it; gives the dialog that asks whether that is meant. */
  async askToDelete(): Promise<Locator> {
    await this.page.getByRole("button", { name: "Delete", exact: true }).click();
    const dialog = this.page.getByRole("alertdialog");
    await expect(dialog).toBeVisible();
    return dialog;
  }

  /** Goes back to the library, or from there to the bench. */
  async back(): Promise<void> {
    await this.page.getByRole("banner").getByRole("link").first().click();
  }
}
