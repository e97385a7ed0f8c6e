import { expect, type Locator, type Page } from "@playwright/test";

/** A page or a part of it in which things are looked for. */
export type Scope = Page | Locator;

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** Names that begin with these words. */
export function beginning(words: string): RegExp {
  return new RegExp(`^${escaped(words)}`);
}

/** A field in which text is typed. */
export function field(scope: Scope, label: string): Locator {
  return scope.getByRole("textbox", { name: label, exact: true });
}

/** Types texts into fields, each by its label. */
export async function fill(scope: Scope, texts: Readonly<Record<string, string>>): Promise<void> {
  for (const [label, text] of Object.entries(texts)) await field(scope, label).fill(text);
}

/** The control of a field in which one of several things is chosen; it says what is chosen. */
export function choice(scope: Scope, label: string): Locator {
  return scope.getByRole("button", { name: new RegExp(`${escaped(label)}$`) });
}

/** Chooses one of several things from a list. */
export async function choose(page: Page, scope: Scope, label: string, word: string): Promise<void> {
  await choice(scope, label).click();
  await page.getByRole("option", { name: word, exact: true }).click();
  await expect(choice(scope, label)).toContainText(word);
}

/** Picks one of a few ways of saying a thing. */
export async function pick(scope: Scope, label: string, word: string): Promise<void> {
  await scope
    .getByRole("radiogroup", { name: beginning(label) })
    .getByText(word, { exact: true })
    .click();
}

/** Opens what stands behind one line; gives its inside. */
export async function more(scope: Scope, title: string): Promise<Locator> {
  const named = new RegExp(`^${escaped(title)}(?=[: ]|$)`);
  const line = scope.getByRole("button", { name: named, expanded: false });
  const inside = scope.getByRole("group", { name: named });
  // pictures that still come in above may move the line from under the pointer
  await expect(async () => {
    await expect(line.or(inside).first()).toBeVisible();
    if (await line.isVisible()) await line.click();
    await expect(inside).toBeVisible({ timeout: 5000 });
  }).toPass();
  return inside;
}

/** Adds a row to a list; gives the row. */
export async function addRow(scope: Scope, list: string, one: string): Promise<Locator> {
  const rows = scope.getByRole("group", { name: list, exact: true });
  const before = await rows.getByRole("button", { name: beginning(`Remove ${one}`) }).count();
  await rows.getByRole("button", { name: `Add ${one}` }).click();
  const remove = rows.page().getByRole("button", { name: `Remove ${one} ${before + 1}`, exact: true });
  const row = rows.getByRole("listitem").filter({ has: remove });
  await expect(row).toBeVisible();
  return row;
}

/** The text of something as a reader sees it: every kind of space is one space. */
export async function words(place: Locator): Promise<string> {
  // biome-ignore lint/performance/useDomNodeTextContent: lines and cells are parted only as they are laid out
  return plain(await place.innerText());
}

/** A text with every kind of space as one space. */
export function plain(text: string): string {
  return text.replace(/\s+/g, " ").trim();
}
