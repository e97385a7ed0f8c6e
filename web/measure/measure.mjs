// Measures the app in Chromium as a flyer would meet it: `npm run measure`, with `-- --strict` to fail on a miss.
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { chromium } from "@playwright/test";
import { readyChromium } from "../../scripts/chromium.mjs";
import { serveBuilt } from "./serve-built.mjs";
import { longestTasks } from "./tasks.mjs";

const dist = join(dirname(fileURLToPath(import.meta.url)), "..", "dist");
const CHANGES = 12;

/** Sizes of what the first visit loads before it can decide, gzipped [kB]. */
function sizes() {
  const page = readFileSync(join(dist, "index.html"), "utf8");
  const assets = readdirSync(join(dist, "assets")).filter((name) => !name.endsWith(".map"));
  const gzipped = (name) => gzipSync(readFileSync(join(dist, "assets", name)), { level: 9 }).length / 1000;
  const first = assets.filter((name) => page.includes(name) || /worker/.test(name));
  const sum = (names) => names.reduce((total, name) => total + gzipped(name), 0);
  return { first: sum(first), all: sum(assets.filter((name) => statSync(join(dist, "assets", name)).isFile())) };
}

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/** Time of a performance mark after navigation, and of the frame that showed it. */
async function firstDecision(browser, address) {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.goto(address, { waitUntil: "commit" });
  await page
    .getByText(/Cut to \d/)
    .first()
    .waitFor();
  const painted = await page.evaluate(
    () =>
      new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(() => resolve(performance.now())))),
  );
  const marked = await page.evaluate(() => performance.getEntriesByName("first-odds")[0]?.startTime ?? null);
  await context.close();
  return { painted, marked };
}

/** Changes the wind again and again; times from the key press to the first odds' frame and to the last draw. */
async function changes(browser, address, traceFile) {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.goto(address);
  await page
    .getByRole("link", { name: /Demo rocket, third flight/ })
    .first()
    .click();
  const wind = page.getByLabel("Wind", { exact: true });
  await wind.waitFor();
  await page.waitForFunction(() => performance.getEntriesByName("settled").length > 0);
  await page.waitForTimeout(2000);
  await browser.startTracing(page, {
    path: traceFile,
    categories: ["devtools.timeline", "disabled-by-default-devtools.timeline", "toplevel"],
  });
  const firsts = [];
  const settled = [];
  for (let i = 0; i < CHANGES; i += 1) {
    await page.evaluate(() => {
      for (const name of ["change", "first-odds", "settled"]) performance.clearMarks(name);
      window.paintedAt = null;
      const seen = () => {
        if (performance.getEntriesByName("first-odds").length === 0) return requestAnimationFrame(seen);
        // the frame after the one in which the marks were seen has shown them
        requestAnimationFrame(() => {
          window.paintedAt = performance.now();
        });
      };
      addEventListener(
        "keydown",
        (event) => {
          window.pressedAt = event.timeStamp;
          requestAnimationFrame(seen);
        },
        { once: true, capture: true },
      );
    });
    await wind.focus();
    await wind.press("End");
    await page.evaluate(() => {
      window.pressedAt = undefined;
    });
    await wind.evaluate((input) => input.setSelectionRange(0, 1));
    await page.evaluate(() =>
      addEventListener(
        "keydown",
        (event) => {
          window.pressedAt = event.timeStamp;
        },
        { once: true, capture: true },
      ),
    );
    await page.keyboard.type(String(2 + (i % 4)));
    await page.waitForFunction(() => performance.getEntriesByName("settled").length > 0 && window.paintedAt !== null);
    const times = await page.evaluate(() => ({
      pressed: window.pressedAt,
      painted: window.paintedAt,
      settled: performance.getEntriesByName("settled")[0].startTime,
    }));
    firsts.push(times.painted - times.pressed);
    settled.push(times.settled - times.pressed);
    await page.waitForTimeout(800);
  }
  await browser.stopTracing();
  await context.close();
  return { firsts, settled };
}

const strict = process.argv.includes("--strict");
const executablePath = readyChromium();
const served = await serveBuilt();
const folder = mkdtempSync(join(tmpdir(), "delaywright-measure-"));
const browser = await chromium.launch({
  ...(executablePath ? { executablePath } : {}),
  args: ["--no-sandbox", "--disable-gpu"],
});
try {
  await firstDecision(browser, served.address);
  const starts = [];
  for (let i = 0; i < 5; i += 1) starts.push(await firstDecision(browser, served.address));
  const trace = join(folder, "trace.json");
  const { firsts, settled } = await changes(browser, served.address, trace);
  const tasks = longestTasks(trace);
  const size = sizes();
  const rows = [
    ["first decision painted, new visitor [ms]", median(starts.map((s) => s.painted)), 1000],
    ["key press to first odds painted, median [ms]", median(firsts), 2 * (1000 / 60)],
    ["key press to first odds painted, slowest [ms]", Math.max(...firsts), null],
    ["key press to all 10,000 draws, median [ms]", median(settled), 500],
    ["key press to all 10,000 draws, slowest [ms]", Math.max(...settled), null],
    ["longest task of the main thread while draws are flown [ms]", tasks[0] ?? 0, 50],
    ["loaded before the first decision, gzipped [kB]", size.first, null],
    ["all of the app, gzipped [kB]", size.all, null],
  ];
  let missed = false;
  for (const [what, value, limit] of rows) {
    const miss = limit !== null && value > limit;
    missed ||= miss;
    const aim = limit === null ? "" : `   (at most ${limit.toFixed(0)}: ${miss ? "MISSED" : "met"})`;
    process.stdout.write(`${what.padEnd(62)}${value.toFixed(1).padStart(8)}${aim}\n`);
  }
  process.exitCode = strict && missed ? 1 : 0;
} finally {
  await browser.close();
  await served.close();
  rmSync(folder, { recursive: true });
}
