import { expect, type Locator, type Page } from "@playwright/test";
import { DocumentPage } from "./library.js";
import { beginning, choice, more, words } from "./sheet.js";

/** The Checks section of a plan. */
export class ChecksSection {
  readonly page: Page;
  readonly section: Locator;

  constructor(page: Page, section: Locator) {
    this.page = page;
    this.section = section;
  }

  /** The line of a rule; those that pass or were not checked stand behind "Every other rule". */
  rule(name: string): Locator {
    const named = this.page.getByRole("rowheader", { name: beginning(name) });
    return this.section.getByRole("row").filter({ has: named }).first();
  }

  /** Where a rule's limit comes from. */
  async source(name: string): Promise<string> {
    await this.rule(name)
      .getByRole("button", { name: /, where the limit of .+ comes from$/ })
      .click();
    const dialog = this.page.getByRole("dialog", { name: `Where the limit of ${name} comes from` });
    const told = await words(dialog);
    await this.page.keyboard.press("Escape");
    await expect(dialog).toBeHidden();
    return told;
  }

  /** Goes to where a fact is said that is not known. */
  async say(fact: string): Promise<void> {
    const asked = await more(this.section, "Say what is not known");
    await asked.getByRole("button", { name: fact, exact: true }).click();
  }

  /** Makes a rule set that the plan is held against, and opens it. */
  async newRuleSet(): Promise<RuleSetPage> {
    await this.section.getByRole("button", { name: "New rule set" }).click();
    await this.section.getByRole("link", { name: "Open New rule set" }).click();
    const rules = new RuleSetPage(this.page);
    await expect(rules.heading).toHaveText("New rule set");
    return rules;
  }
}

/** A club's rule set. */
export class RuleSetPage extends DocumentPage {
  private get rules(): Locator {
    return this.main.getByRole("group", { name: "Rules that are otherwise here" });
  }

  /** One rule that is set here. */
  rule(name: string): Locator {
    const remove = this.page.getByRole("button", { name: `Remove ${name}`, exact: true });
    return this.rules.getByRole("listitem").filter({ has: remove });
  }

  /** Adds a rule, by its name and what its source begins with; gives its lines. */
  async add(name: string, source: string): Promise<Locator> {
    await choice(this.rules, "Set or turn off another rule").click();
    await this.page
      .getByRole("option", { name: beginning(name) })
      .filter({ hasText: source })
      .click();
    await expect(this.rule(name)).toBeVisible();
    return this.rule(name);
  }

  /** Goes to a plan that uses it. */
  async goToPlan(name: string): Promise<void> {
    await this.main.getByRole("link", { name, exact: true }).click();
    await expect(this.heading).toHaveText(name);
  }
}
