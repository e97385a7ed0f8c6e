import AxeBuilder from "@axe-core/playwright";
import { expect, type Locator, type Page } from "@playwright/test";

/** WCAG 2.2 at level AA with all that it took over from 2.0 and 2.1, and what is good practice beside it. */
const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** What another theme can break: it changes colours and nothing else. */
const ofColours = ["color-contrast", "link-in-text-block"];

/** While a dialog asks, the page behind it is out of reach, and with it its main part and its heading. */
const ofWholePages = ["landmark-one-main", "page-has-heading-one"];

/** What axe finds; each finding is named with its place. The app has no frames, so that the page looks through itself. */
async function noFindings(page: Page, screen: string, asked: (axe: AxeBuilder) => AxeBuilder): Promise<void> {
  const axe = new AxeBuilder({ page }).options({ resultTypes: ["violations"] }).setLegacyMode();
  const { violations } = await asked(axe).analyze();
  const found = violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id}: ${target} ${failureSummary}`),
  );
  expect.soft(found, `axe on ${screen}`).toEqual([]);
}

/** Nothing hinders a flyer who sees, hears or points otherwise, in any theme; then the page has its own theme again. */
export async function isAccessible(page: Page, screen: string): Promise<void> {
  const set = (theme: string | undefined): Promise<string | undefined> =>
    page.evaluate((wanted) => {
      const { dataset } = document.documentElement;
      const before = dataset["theme"];
      if (wanted === undefined) delete dataset["theme"];
      else dataset["theme"] = wanted;
      return before;
    }, theme);
  const own = await set("light");
  const asks = (await page.locator('[role="dialog"], [role="alertdialog"]').count()) > 0;
  await noFindings(page, `${screen}, light`, (axe) => axe.withTags(tags).disableRules(asks ? ofWholePages : []));
  for (const theme of ["dark", "sun"]) {
    await set(theme);
    await noFindings(page, `${screen}, ${theme}`, (axe) => axe.withRules(ofColours));
  }
  await set(own);
}

/** The page itself never scrolls sideways. */
export async function fitsWidth(page: Page, screen: string): Promise<void> {
  const wide = await page.evaluate(() => {
    const root = document.documentElement;
    if (root.scrollWidth <= root.clientWidth) return [];
    const over = [...document.querySelectorAll("body *")].filter((each) => {
      const { right, width } = each.getBoundingClientRect();
      return width > 0 && (right > root.clientWidth + 1 || each.scrollWidth > root.clientWidth);
    });
    return [
      `${root.scrollWidth} of ${root.clientWidth}`,
      ...over.slice(0, 5).map((each) => each.outerHTML.slice(0, 120)),
    ];
  });
  expect.soft(wide, `width of ${screen}`).toEqual([]);
}

/** Everything that is pressed is large enough to be hit; links inside a line of text are not targets of their own. */
export async function hasLargeTargets(page: Page, screen: string, least: number): Promise<void> {
  const small = await page.evaluate((wanted) => {
    const targets = 'a[href], button, input, select, textarea, summary, [role="menuitem"], [role="option"]';
    const inText = (each: Element): boolean =>
      getComputedStyle(each).display === "inline" &&
      (each.parentElement?.textContent ?? "").trim() !== (each.textContent ?? "").trim();
    // what only a screen reader finds is pressed by no finger
    const unseen = (each: Element | null): boolean =>
      each !== null && (getComputedStyle(each).clipPath !== "none" || unseen(each.parentElement));
    return [...document.querySelectorAll(targets)].flatMap((each) => {
      if (!each.checkVisibility({ visibilityProperty: true }) || inText(each)) return [];
      if (!(each instanceof HTMLInputElement) && unseen(each)) return [];
      const target = each instanceof HTMLInputElement ? (each.closest("label") ?? each) : each;
      const { width, height, bottom } = target.getBoundingClientRect();
      // the way past the head of the page comes into view with the focus
      if (bottom + scrollY <= 0) return [];
      if (height >= wanted - 0.5 && width >= wanted - 0.5) return [];
      return [`${Math.round(width)} x ${Math.round(height)}: ${target.outerHTML.slice(0, 140)}`];
    });
  }, least);
  expect.soft(small, `targets of ${screen}`).toEqual([]);
}

/** Whether what has the focus shows it by an outline. */
export function focusShows(page: Page): Promise<string | null> {
  return page.evaluate(() => {
    const focused = document.activeElement;
    if (focused === null || focused === document.body) return null;
    for (
      let each: Element | null = focused, depth = 0;
      each !== null && depth < 3;
      each = each.parentElement, depth += 1
    ) {
      const { outlineStyle, outlineWidth } = getComputedStyle(each);
      if (outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2) return null;
    }
    return focused.outerHTML.slice(0, 160);
  });
}

/** Goes on by the Tab key until the focus is on something; where it goes it must be seen. */
export async function tabTo(page: Page, place: Locator, key: "Tab" | "Shift+Tab" = "Tab"): Promise<void> {
  const name = place.toString();
  for (let presses = 0; presses < 250; presses += 1) {
    if (await place.evaluate((each) => each === document.activeElement)) return;
    await page.keyboard.press(key);
    expect(await focusShows(page), "the focus shows").toBeNull();
  }
  throw new Error(`the focus never came to ${name}`);
}
