import { expect, type Locator, type Page } from "@playwright/test";
import { PlanPage } from "./plan.js";

/** One glance at the pad. */
export class PadPage {
  readonly page: Page;
  readonly heading: Locator;
  /** Whether it still is good, in large letters. */
  readonly answer: Locator;
  readonly good: Locator;
  readonly wind: Locator;
  readonly lands: Locator;
  readonly foot: Locator;

  constructor(page: Page) {
    this.page = page;
    this.heading = page.getByRole("heading", { level: 1 });
    this.good = page.getByRole("region", { name: "Still good?" });
    this.answer = this.good.getByRole("heading", { level: 2 });
    this.wind = page.getByRole("group", { name: "Wind", exact: true });
    this.lands = page.getByRole("region", { name: "Where it lands" });
    this.foot = page.getByRole("region", { name: "Before you go on" });
  }

  async isOpen(): Promise<void> {
    await expect(this.answer).toBeVisible();
  }

  /** What the answer says for who does not see it; empty while it settles. */
  get said(): Locator {
    return this.good.getByRole("status");
  }

  async moreWind(): Promise<void> {
    await this.page.getByRole("button", { name: "More wind" }).click();
  }

  async lessWind(): Promise<void> {
    await this.page.getByRole("button", { name: "Less wind" }).click();
  }

  async backToPlan(): Promise<PlanPage> {
    await this.page.getByRole("link", { name: "Plan", exact: true }).click();
    const plan = new PlanPage(this.page);
    await expect(plan.answer).toBeVisible();
    return plan;
  }
}
