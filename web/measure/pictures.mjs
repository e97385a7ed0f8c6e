// Takes the pictures of docs/pictures anew: `npm run pictures`. They show the worked example as a new visitor meets it.
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "@playwright/test";
import { readyChromium } from "../../scripts/chromium.mjs";
import { serveBuilt } from "./serve-built.mjs";

const folder = fileURLToPath(new URL("../../docs/pictures/", import.meta.url));
const desk = { width: 1440, height: 900 };
const phone = { width: 390, height: 844 };
const plan = "#/plan/worked-example.plan.json";
const pad = "#/pad/worked-example.plan.json";

const pictures = [
  { name: "bench", address: "", viewport: desk },
  { name: "bench-phone", address: "", viewport: phone, whole: true },
  { name: "plan", address: plan, viewport: desk },
  { name: "plan-whole", address: plan, viewport: desk, whole: true },
  { name: "plan-dark", address: plan, viewport: desk, theme: "dark" },
  { name: "plan-sunlight", address: plan, viewport: desk, theme: "sun" },
  { name: "plan-phone", address: plan, viewport: phone },
  { name: "plan-phone-dark", address: plan, viewport: phone, theme: "dark" },
  { name: "pad", address: pad, viewport: phone },
];

/** Waits until every answer and picture of the page has settled: nothing in it changes any more. */
async function settled(page) {
  await page.waitForFunction(() => /\d\s%/.test(document.querySelector("main")?.textContent ?? ""), undefined, {
    timeout: 120_000,
  });
  await page.evaluate(
    () =>
      new Promise((resolve) => {
        const quiet = () => {
          observer.disconnect();
          resolve();
        };
        let timer = setTimeout(quiet, 4000);
        const observer = new MutationObserver(() => {
          clearTimeout(timer);
          timer = setTimeout(quiet, 4000);
        });
        observer.observe(document.body, { subtree: true, childList: true, attributes: true });
      }),
  );
}

mkdirSync(folder, { recursive: true });
const served = await serveBuilt();
const executablePath = readyChromium();
const browser = await chromium.launch({
  ...(executablePath ? { executablePath } : {}),
  args: ["--no-sandbox", "--disable-gpu"],
});
try {
  for (const { name, address, viewport, whole = false, theme } of pictures) {
    const context = await browser.newContext({ viewport, reducedMotion: "reduce" });
    const page = await context.newPage();
    await page.goto(`${served.address}${address}`);
    await settled(page);
    if (theme !== undefined) {
      await page.evaluate((chosen) => {
        document.documentElement.dataset["theme"] = chosen;
      }, theme);
      await settled(page);
    }
    await page.screenshot({ path: join(folder, `${name}.png`), fullPage: whole });
    await context.close();
  }
} finally {
  await browser.close();
  await served.close();
}
