import { expect, type Locator, type Page } from "@playwright/test";
import { BenchPage } from "./bench.js";
import { LabelPage } from "./label.js";
import { PadPage } from "./pad.js";
import { beginning, plain, words } from "./sheet.js";
import { ShortlistPage } from "./shortlist.js";

/** Longest that all draws may take on a machine that has other work [ms]. */
const PATIENCE = 45_000;

/** One row of the table of settings, as it stands there. */
export type SettingRow = Readonly<Record<"delay" | "cut" | "clean" | "holds" | "half" | "below" | "above", string>>;

export type SectionTitle =
  | "Rocket"
  | "Motor"
  | "Field & weather"
  | "Delay"
  | "Cut"
  | "Packing"
  | "Checks"
  | "Prep"
  | "Card"
  | "Debrief";

/** A plan's sheet. */
export class PlanPage {
  readonly page: Page;
  readonly heading: Locator;
  /** The answer, which stays in view. */
  readonly answer: Locator;
  /** The answer for who does not see it; empty while it settles. */
  readonly said: Locator;
  readonly settings: Locator;

  constructor(page: Page) {
    this.page = page;
    this.heading = page.getByRole("heading", { level: 1 });
    this.answer = page.getByRole("region", { name: "The answer" });
    this.said = this.answer.getByRole("status");
    this.settings = page.getByRole("radiogroup", { name: "The delay to go for" });
  }

  get narrow(): boolean {
    return (this.page.viewportSize()?.width ?? 0) <= 600;
  }

  /** Waits until all draws are flown; gives what the answer says. */
  async settled(): Promise<string> {
    await expect(this.said).not.toBeEmpty({ timeout: PATIENCE });
    await expect(this.page.getByRole("main")).toHaveAttribute("aria-busy", "false", { timeout: PATIENCE });
    return plain((await this.said.textContent()) ?? "");
  }

  /** Does something that changes the answer; gives what it says once it has settled anew. */
  async answerAfter(act: () => Promise<void>): Promise<string> {
    const before = await this.settled();
    await act();
    const said = async (): Promise<string> => plain((await this.said.textContent()) ?? "");
    await expect.poll(said, { timeout: PATIENCE }).not.toMatch(same(before));
    return this.settled();
  }

  /** The figure of the answer that stands before "clean". */
  get odds(): Locator {
    return this.answer.getByRole("button", { name: /clean, how exact$/ });
  }

  /** The one thing to do next; on a phone it stands at the foot as well. */
  get next(): Locator {
    return this.page.getByRole("button", { name: /^Next: / }).first();
  }

  /** A section, unfolded where it is folded. */
  async section(title: SectionTitle): Promise<Locator> {
    if (!this.narrow) {
      const heading = this.page.getByRole("heading", { level: 2, name: beginning(title) });
      return this.page.locator("section").filter({ has: heading });
    }
    const folded = new RegExp(`^${title} ?,`);
    const line = this.page.getByRole("heading", { level: 2, name: folded }).getByRole("button");
    if ((await line.getAttribute("aria-expanded")) !== "true") await line.click();
    await expect(line).toHaveAttribute("aria-expanded", "true");
    return this.page.getByRole("group", { name: folded });
  }

  /** Goes to a section by the list of sections, and waits until it is seen. */
  async goTo(title: SectionTitle): Promise<void> {
    if (this.narrow) {
      await this.page.getByRole("button", { name: "Sections", exact: true }).click();
      await this.page.getByRole("menuitem", { name: beginning(title) }).click();
    } else {
      const list = this.page.getByRole("navigation", { name: "Sections" });
      await list.getByRole("button", { name: beginning(title) }).click();
    }
    await expect(this.page.getByRole("heading", { level: 2, name: beginning(title) })).toBeInViewport();
  }

  /** The table of settings as it stands on the page; columns that a phone leaves out are empty. */
  async settingRows(): Promise<readonly SettingRow[]> {
    const rows = this.settings.getByRole("row").filter({ has: this.page.getByRole("radio") });
    const texts: SettingRow[] = [];
    for (const row of await rows.all()) {
      const cells = await row.locator("td").allInnerTexts();
      const at = (index: number): string => plain(cells[index] ?? "");
      const delay = at(0).replace(/ ?, the delay to cut$/, "");
      texts.push({ delay, cut: at(1), clean: at(3), holds: at(4), half: at(5), below: at(6), above: at(7) });
    }
    return texts;
  }

  async undo(): Promise<void> {
    await this.page.getByRole("button", { name: /^Undo: / }).click();
  }

  async redo(): Promise<void> {
    if (this.narrow) await this.fromMenu(/^Redo: /);
    else await this.page.getByRole("button", { name: /^Redo: / }).click();
  }

  async showInchesAndFeet(): Promise<void> {
    if (this.narrow) await this.fromMenu("Show feet and inches");
    else await this.page.getByRole("radio", { name: "in", exact: true }).click();
  }

  async goToPad(): Promise<PadPage> {
    if (this.narrow) await this.fromMenu("Pad view");
    else await this.page.getByRole("link", { name: "Pad view" }).click();
    const pad = new PadPage(this.page);
    await pad.isOpen();
    return pad;
  }

  async goToShortlist(): Promise<ShortlistPage> {
    await (await this.section("Motor")).getByRole("link", { name: "Shortlist of my motors" }).click();
    const list = new ShortlistPage(this.page);
    await list.isOpen();
    return list;
  }

  async goToBench(): Promise<BenchPage> {
    await this.page.getByRole("link", { name: "Bench", exact: true }).click();
    const bench = new BenchPage(this.page);
    await bench.isOpen();
    return bench;
  }

  async goToLabel(): Promise<LabelPage> {
    await (await this.section("Cut")).getByRole("link", { name: "Label for the bag" }).click();
    const label = new LabelPage(this.page);
    await label.isOpen();
    return label;
  }

  /** Says what is in hand: one motor of the plan's type, by what is written on its bag. */
  async nameMotorInHand(label: string, lot: string): Promise<void> {
    await (await this.section("Cut")).getByRole("button", { name: "Name the motor in hand" }).click();
    const dialog = this.page.getByRole("alertdialog");
    await dialog.getByRole("textbox", { name: "What you wrote on its bag" }).fill(label);
    await dialog.getByRole("textbox", { name: "Lot, as printed" }).fill(lot);
    await dialog.getByRole("button", { name: "Put it into the plan" }).click();
    await expect(dialog).toBeHidden();
  }

  /** Types what the depth gauge says. */
  async read(depths: { readonly before?: string; readonly after?: string; readonly now?: string }): Promise<Locator> {
    const cut = await this.section("Cut");
    const type = (label: string, text: string | undefined): Promise<void> =>
      text === undefined ? Promise.resolve() : cut.getByRole("textbox", { name: label, exact: true }).fill(text);
    await type("before the cut", depths.before);
    await type("after the cut", depths.after);
    await type("read now", depths.now);
    return cut;
  }

  /** Writes down what was typed; gives what the dialog repeated. */
  async record(act: "Record the depth before" | "Record the cut" | "Record the correction"): Promise<string> {
    const cut = await this.section("Cut");
    await cut.getByRole("button", { name: "Record this reading" }).click();
    const dialog = this.page.getByRole("alertdialog");
    const repeated = await words(dialog);
    await dialog.getByRole("button", { name: act }).click();
    await expect(dialog).toBeHidden();
    return repeated;
  }

  /** What the gauge should read, by the three lines beside the field. */
  async depthToReach(word: "keep cutting" | "stop here" | "over-cut"): Promise<string> {
    const reads = this.page.getByRole("columnheader", { name: "gauge reads" });
    const aid = (await this.section("Cut")).getByRole("table").filter({ has: reads });
    const line = aid.getByRole("row").filter({ has: this.page.getByRole("cell", { name: word, exact: true }) });
    return words(line.getByRole("cell").nth(1));
  }

  /** Names a motor in hand and cuts it as the plan says. */
  async cutAsPlanned(label: string, before: string): Promise<void> {
    await this.nameMotorInHand(label, "L-18");
    await this.read({ before });
    await this.read({ after: await this.depthToReach("stop here") });
    await this.answerAfter(async () => {
      await this.record("Record the cut");
    });
  }

  /** Readings of the motor in hand, a line each. */
  async readings(): Promise<readonly string[]> {
    const table = (await this.section("Cut")).getByRole("table", { name: "Readings, as they were recorded" });
    const rows = await table.getByRole("row").allInnerTexts();
    return rows.slice(1).map(plain);
  }

  private async fromMenu(item: string | RegExp): Promise<void> {
    await this.page.getByRole("banner").getByRole("button", { name: "More" }).click();
    await this.page.getByRole("menuitem", { name: item }).click();
  }
}

/** What is the same answer, or none yet. */
function same(answer: string): RegExp {
  return new RegExp(`^(${answer.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")})?$`);
}
