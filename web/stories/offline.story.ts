import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { serveFolder } from "./given/serve-folder.js";
import { WORKED_EXAMPLE } from "./pages/bench.js";
import { PlanPage } from "./pages/plan.js";
import { field } from "./pages/sheet.js";
import { expect, story } from "./story.js";

const dist = fileURLToPath(new URL("../dist", import.meta.url));

interface Serving {
  /** A copy of the built app that the story serves by itself. */
  readonly copy: string;
}

const served = story.extend<Serving>({
  // biome-ignore lint/correctness/noEmptyPattern: the runner reads from the pattern what is needed: nothing
  copy: async ({}, use) => {
    const copy = mkdtempSync(join(tmpdir(), "delaywright-app-"));
    cpSync(dist, copy, { recursive: true });
    await use(copy);
    rmSync(copy, { recursive: true });
  },
  baseURL: async ({ copy }, use) => {
    const { address, close } = await serveFolder(copy);
    await use(address);
    await close();
  },
});

/** Puts a newer version of the app in place of the one that is served, as a new build would. */
function publishNewer(copy: string): void {
  const page = join(copy, "index.html");
  writeFileSync(page, readFileSync(page, "utf8").replace("<head>", '<head><meta name="newer" content="yes" />'));
  const worker = join(copy, "sw.js");
  const before = readFileSync(worker, "utf8");
  const after = before.replace(/(\{url:"index\.html",revision:")[^"]+/, "$1of-the-newer-version");
  expect(after, "the list of what is kept names the page").not.toBe(before);
  writeFileSync(worker, after);
}

story("at a field without a network the bench opens, decides and keeps what is typed", async ({ bench, page }) => {
  await expect(page.getByText("The app is kept too: it opens without a network.")).toBeVisible();
  await page.context().setOffline(true);
  await page.reload();
  await bench.isOpen();
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  const calm = await plan.settled();
  const windy = await plan.answerAfter(async () => {
    await field(await plan.section("Field & weather"), "Wind").fill("7 m/s");
  });
  expect(windy).not.toBe(calm);

  await story.step("a second tab opens there too, with the new wind", async () => {
    const other = await page.context().newPage();
    await other.goto(page.url());
    const same = new PlanPage(other);
    await expect(field(await same.section("Field & weather"), "Wind")).toHaveValue("7 m/s");
    expect(await same.settled()).toBe(windy);
    await other.close();
  });

  await story.step("every other page opens as well", async () => {
    const pad = await plan.goToPad();
    await pad.backToPlan();
    const rocket = await (await plan.goToBench()).openDocument("Rockets", "Demo rocket 76");
    await expect(rocket.main.getByRole("img", { name: "Rocket outline" })).toBeVisible();
  });
});

served("a newer version is offered and waits until it is taken", async ({ bench, page, copy }) => {
  await expect(page.getByText("The app is kept too: it opens without a network.")).toBeVisible();
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  const wind = field(await plan.section("Field & weather"), "Wind");
  await wind.fill("3 m");
  let loads = 0;
  page.on("load", () => {
    loads += 1;
  });
  const newer = page.locator('meta[name="newer"]');

  await story.step("a newer version comes out while something is half typed", async () => {
    publishNewer(copy);
    await page.evaluate(async () => void (await (await navigator.serviceWorker.getRegistration())?.update()));
    await expect(page.getByText("A newer version is ready.")).toBeVisible();
    await expect(wind).toHaveValue("3 m");
    await wind.pressSequentially("/s");
    await plan.settled();
    expect(loads, "nothing was loaded by itself").toBe(0);
    await expect(newer).not.toBeAttached();
  });

  await story.step("it is taken: the page loads once, and all is there", async () => {
    await page.getByRole("button", { name: "Take it now" }).click();
    await expect(newer).toBeAttached();
    await plan.settled();
    await expect(field(await plan.section("Field & weather"), "Wind")).toHaveValue("3 m/s");
    await expect(page.getByText("A newer version is ready.")).toBeHidden();
    expect(loads).toBe(1);
  });
});
