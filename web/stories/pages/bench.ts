import { readFile } from "node:fs/promises";
import { expect, type Locator, type Page } from "@playwright/test";
import { CardDeskPage } from "./card-desk.js";
import { ImportPage } from "./import.js";
import { type DocumentPage, ShelfPage } from "./library.js";
import { PlanPage } from "./plan.js";
import { words } from "./sheet.js";

/** The plan that a new visitor finds. */
export const WORKED_EXAMPLE = "Demo rocket, third flight";

/** Home: the plans, the libraries, the back-up. */
export class BenchPage {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  /** Opens the app at its address. */
  async open(): Promise<void> {
    await this.page.goto("");
    await this.isOpen();
  }

  async isOpen(): Promise<void> {
    await expect(this.page.getByRole("heading", { level: 1, name: "Bench" })).toBeVisible();
  }

  card(plan: string): Locator {
    return this.page.getByRole("article", { name: plan, exact: true });
  }

  /** What a plan's card says once its answer has settled. */
  async settledCard(plan: string): Promise<string> {
    await expect(this.card(plan)).toHaveAttribute("aria-busy", "false");
    return words(this.card(plan));
  }

  cards(): Locator {
    return this.page.getByRole("article");
  }

  async openPlan(plan: string): Promise<PlanPage> {
    await this.card(plan).getByRole("link", { name: plan, exact: true }).click();
    return this.planNamed(plan);
  }

  async newPlan(): Promise<PlanPage> {
    await this.page.getByRole("button", { name: "New plan" }).click();
    return this.planNamed("New plan");
  }

  /** One of the acts behind a card's "More". */
  async actOnPlan(plan: string, act: string): Promise<void> {
    await this.card(plan)
      .getByRole("button", { name: `More, ${plan}`, exact: true })
      .click();
    await this.page.getByRole("menuitem", { name: act }).click();
  }

  async openShelf(title: string): Promise<ShelfPage> {
    await this.page
      .getByRole("complementary", { name: "Libraries and back-up" })
      .getByRole("link", { name: new RegExp(`^${title}`) })
      .click();
    const shelf = new ShelfPage(this.page, title);
    await shelf.isOpen();
    return shelf;
  }

  async openDocument(shelf: string, name: string): Promise<DocumentPage> {
    return (await this.openShelf(shelf)).openDocument(name);
  }

  async goToImport(): Promise<ImportPage> {
    await this.page.getByRole("banner").getByRole("link", { name: "Import" }).click();
    const place = new ImportPage(this.page);
    await place.isOpen();
    return place;
  }

  async goToCardDesk(): Promise<CardDeskPage> {
    await this.page.getByRole("banner").getByRole("link", { name: "Card desk" }).click();
    const desk = new CardDeskPage(this.page);
    await desk.isOpen();
    return desk;
  }

  /** Exports everything; gives the text of the file. */
  async exportEverything(): Promise<string> {
    const saved = this.page.waitForEvent("download");
    await this.page.getByRole("button", { name: "Export everything" }).click();
    return readFile(await (await saved).path(), "utf8");
  }

  private async planNamed(name: string): Promise<PlanPage> {
    const plan = new PlanPage(this.page);
    await expect(plan.heading).toHaveText(name);
    return plan;
  }
}
