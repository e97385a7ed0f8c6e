import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Served, serveFolder } from "./given/serve-folder.js";
import { WORKED_EXAMPLE } from "./pages/bench.js";
import { CardDeskPage } from "./pages/card-desk.js";
import { PlanPage } from "./pages/plan.js";
import { field } from "./pages/sheet.js";
import { expect, story } from "./story.js";

const dist = fileURLToPath(new URL("../dist", import.meta.url));

interface Serving {
  /** A copy of the built app that the story serves by itself. */
  readonly copy: string;
  /** The server of that copy. */
  readonly server: Served;
}

const served = story.extend<Serving>({
  // biome-ignore lint/correctness/noEmptyPattern: the runner reads from the pattern what is needed: nothing
  copy: async ({}, use) => {
    const copy = mkdtempSync(join(tmpdir(), "delaywright-app-"));
    cpSync(dist, copy, { recursive: true });
    await use(copy);
    rmSync(copy, { recursive: true });
  },
  server: async ({ copy }, use) => {
    const server = await serveFolder(copy);
    await use(server);
    await server.close();
  },
  baseURL: async ({ server }, use) => use(server.address),
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

/** The words by which a flyer knows that the app needs no network from now on. */
const KEPT = "The app is kept too: it opens without a network.";

served(
  "at a field without a network the bench opens, decides and keeps what is typed",
  async ({ bench, page, server }) => {
    await expect(page.getByText(KEPT)).toBeVisible();
    const before = await bench.openPlan(WORKED_EXAMPLE);
    const calm = await before.settled();
    const address = page.url();

    await story.step("the network is gone, and whoever served the app as well", async () => {
      await page.context().setOffline(true);
      await server.close();
      await expect(fetch(server.address)).rejects.toThrow();
    });

    const windy = await story.step("the page is loaded again: the same odds, and a new wind moves them", async () => {
      await page.reload();
      expect(await before.settled()).toBe(calm);
      const after = await before.answerAfter(async () => {
        await field(await before.section("Field & weather"), "Wind").fill("7 m/s");
      });
      expect(after).not.toBe(calm);
      await expect(page.getByRole("banner")).toContainText(/saved \d\d:\d\d on this device/);
      return after;
    });

    await story.step("the app is closed and opened once more, with the new wind", async () => {
      const other = await page.context().newPage();
      await page.close();
      await other.goto(address);
      const plan = new PlanPage(other);
      await expect(field(await plan.section("Field & weather"), "Wind")).toHaveValue("7 m/s");
      expect(await plan.settled()).toBe(windy);

      const pad = await plan.goToPad();
      await pad.backToPlan();
      const home = await plan.goToBench();
      await expect(home.card(WORKED_EXAMPLE)).toContainText(/\d+\s%\sclean/);
      const rocket = await home.openDocument("Rockets", "Demo rocket 76");
      await expect(rocket.main.getByRole("img", { name: "Rocket outline" })).toBeVisible();
    });
  },
);

served("a newer version is offered and waits until it is taken", async ({ bench, page, copy }) => {
  await expect(page.getByText(KEPT)).toBeVisible();
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  const wind = field(await plan.section("Field & weather"), "Wind");
  await wind.fill("3 m");
  let loads = 0;
  page.on("load", () => {
    loads += 1;
  });
  const newer = page.locator('meta[name="newer"]');
  const other = await page.context().newPage();
  await other.goto(page.url().replace(/#.*/, "#/card-desk"));
  await new CardDeskPage(other).byCode();
  const pasted = other.getByRole("textbox", { name: "Or paste what the code says" });
  await pasted.fill("half of a code");

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

  await story.step("another tab is not loaded again by that: it says so, and keeps what was typed", async () => {
    await expect(other.getByText("A newer version was taken in another tab.")).toBeVisible();
    await expect(pasted).toHaveValue("half of a code");
    await other.getByRole("button", { name: "Load this page again" }).click();
    await expect(other.locator('meta[name="newer"]')).toBeAttached();
  });
});
