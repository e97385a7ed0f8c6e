import { writeFile } from "node:fs/promises";
import type { Browser, LaunchOptions } from "@playwright/test";
import { closeUp, recordingOf } from "./given/camera.js";
import { BenchPage, WORKED_EXAMPLE } from "./pages/bench.js";
import { choose, fill, plain, words } from "./pages/sheet.js";
import { expect, story } from "./story.js";

/** An invented card: the demo rocket on the demo motor, as its flyer wrote it. */
const card = {
  Mass: "2.28 kg",
  Balance: "942 mm",
  Diameter: "76mm",
  Length: "1.52 m",
  "CP as stated": "1.106 m",
  "Total impulse": "309 N s",
  "Burn time": "2.08 s",
  "Delay as set": "9 s",
};

story("A card that is typed off gives odds and checks, and leaves nothing on the bench", async ({ bench, page }) => {
  const before = JSON.parse(await bench.exportEverything());
  const desk = await bench.goToCardDesk();
  await expect(desk.answer).toContainText("The mass as weighed ready to fly");
  await fill(desk.card, card);

  await story.step("what is still missing is named, what is wrong is said beside its field", async () => {
    await expect(desk.answer).toContainText("The diameter of the main parachute");
    await fill(desk.card, { Mass: "2.28" });
    await expect(desk.card).toContainText(/The unit is missing/);
    await fill(desk.card, { Mass: "2.28 kg" });
  });

  await fill(desk.card, { "Parachute, diameter": "1.1 m" });
  await desk.settled();
  const odds = await words(desk.odds);
  expect(odds).toMatch(/^\d+ %/);
  const said = await desk.said();
  expect(said).toMatch(/9 in 10 open below \d+ m\/s and above \d+ m/);
  expect(said).toMatch(/\d+ within\./);
  await expect(page.getByText(/^If nothing opens/).first()).toBeVisible();
  expect(said).toMatch(/Its delay is 9 s\s*As the card states it/);
  expect(said).not.toMatch(/cannot be set|tool at hand/i);
  for (const assumed of ["Travel on the guide: 1.5 m", "Shape of the nose: ogive", "Drag: a drag coefficient"])
    expect(said).toContain(assumed);

  await story.step("another delay, other odds", async () => {
    await fill(desk.card, { "Delay as set": "14 s" });
    await expect.poll(async () => words(desk.odds)).not.toBe(odds);
    await desk.settled();
  });

  await story.step("a motor of the library, the field and the weather of one's own plan", async () => {
    await choose(page, desk.card, "Motor", "Demo H150");
    const plan = page.getByRole("option", { name: new RegExp(`^${WORKED_EXAMPLE}`) });
    await desk.card.getByRole("button", { name: /Field and weather$/ }).click();
    await plan.click();
    await desk.settled();
    expect(await desk.said()).not.toContain("Thrust curve:");
    expect(await desk.said()).not.toContain("Weather: calm");
  });

  await story.step("nothing was kept", async () => {
    await page.getByRole("link", { name: "Bench", exact: true }).click();
    await bench.isOpen();
    await page.reload();
    await bench.isOpen();
    expect(JSON.parse(await bench.exportEverything()).documents).toEqual(before.documents);
  });
});

story("A card is kept as a plan where that is asked for @desk", async ({ bench, page }) => {
  const desk = await bench.goToCardDesk();
  await fill(desk.card, { Rocket: "Guest rocket", ...card, "Parachute, diameter": "1.1 m" });
  await desk.settled();
  const odds = (await words(desk.odds)).replace(" clean, how exact", "");
  await desk.keep.click();
  const heading = page.getByRole("heading", { level: 1 });
  await expect(heading).toHaveText("Guest rocket");
  await expect(page.getByRole("region", { name: "The answer" }).getByRole("status")).not.toBeEmpty();
  expect(
    plain(
      (await page
        .getByRole("region", { name: "The answer" })
        .getByRole("button", { name: /clean, how exact$/ })
        .textContent()) ?? "",
    ),
  ).toContain(odds);
});

story(
  "A card is read through the camera, offline too, where the browser has no reader of its own @desk",
  async ({ bench, page, guard, playwright, launchOptions, baseURL }, info) => {
    const plan = await bench.openPlan(WORKED_EXAMPLE);
    const [lead = ""] = (await plan.settled()).split(". ");
    const odds = (await words(plan.odds)).replace(" clean, how exact", "");
    const section = await plan.section("Card");
    await section.scrollIntoViewIfNeeded();
    const card = section.getByRole("region", { name: "Flight card" });
    await expect(card).toContainText(WORKED_EXAMPLE);
    const recording = info.outputPath("card.y4m");
    await writeFile(
      recording,
      await recordingOf(page, await closeUp(page, card.getByRole("img", { name: "QR code of this plan" }))),
    );

    const look = async (browser: Browser): Promise<void> => {
      const context = await browser.newContext({ baseURL: baseURL ?? "" });
      const eye = await context.newPage();
      guard.watch(eye);
      const there = new BenchPage(eye);
      await there.open();
      expect(await eye.evaluate(() => "BarcodeDetector" in globalThis)).toBe(false);
      await eye.evaluate(() => navigator.serviceWorker.ready);
      await context.setOffline(true);
      const desk = await there.goToCardDesk();
      await desk.byCode();
      await desk.look();
      await expect(desk.card).toContainText(`Read: ${WORKED_EXAMPLE}.`);
      await expect(eye.getByLabel("What the camera sees")).toHaveCount(0);
      await desk.settled();
      expect(await desk.said()).toContain(lead);
      expect((await words(desk.odds)).replace(" clean, how exact", "")).toBe(odds);
    };
    const seeing = ["--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream"];
    await withBrowser(playwright, launchOptions, [...seeing, `--use-file-for-fake-video-capture=${recording}`], look);
  },
);

story(
  "No camera, and one that is not allowed, say so and what else to do @desk",
  async ({ bench, guard, playwright, launchOptions, baseURL }) => {
    const desk = await bench.goToCardDesk();
    await desk.byCode();
    await desk.look();
    await expect(desk.card).toContainText("No camera was found: choose a photo, or paste the text.");

    await withBrowser(playwright, launchOptions, ["--use-fake-device-for-media-stream"], async (browser) => {
      const context = await browser.newContext({ baseURL: baseURL ?? "" });
      const eye = await context.newPage();
      guard.watch(eye);
      const there = new BenchPage(eye);
      await there.open();
      const session = await context.newCDPSession(eye);
      await session.send("Browser.setPermission", { permission: { name: "camera" }, setting: "denied" });
      const refused = await there.goToCardDesk();
      await refused.byCode();
      await refused.look();
      await expect(refused.card).toContainText("The camera is not allowed here: allow it for this page in the browser");
    });
  },
);

/** A browser of its own, with other switches. */
async function withBrowser(
  { chromium }: { readonly chromium: { launch: (options: LaunchOptions) => Promise<Browser> } },
  options: LaunchOptions,
  more: readonly string[],
  use: (browser: Browser) => Promise<void>,
): Promise<void> {
  const browser = await chromium.launch({ ...options, args: [...(options.args ?? []), ...more] });
  try {
    await use(browser);
  } finally {
    await browser.close();
  }
}
