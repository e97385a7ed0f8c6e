// Measures the app in Chromium as a flyer would meet it: `npm run measure`, with `-- --strict` to fail on a miss.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { chromium } from "@playwright/test";
import { readyChromium } from "../../scripts/chromium.mjs";
import { longLogRows } from "./long-log-rows.mjs";
import { serveBuilt } from "./serve-built.mjs";
import { longestTasks } from "./tasks.mjs";

const dist = join(dirname(fileURLToPath(import.meta.url)), "..", "dist");

/** Size of files of the app, gzipped [kB]. */
function gzipped(names) {
  const size = (name) => gzipSync(readFileSync(join(dist, "assets", name)), { level: 9 }).length / 1000;
  return names.reduce((total, name) => total + size(name), 0);
}

const assets = () => readdirSync(join(dist, "assets")).filter((name) => !name.endsWith(".map"));

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/**
 * Runs in the page: `window.afterPaint(isThere)` resolves to the time right after the frame that first shows something, and
 * `window.afterMark(name)` to that after the first frame once something was marked.
 */
function bringStopwatch() {
  // what is there before a frame is drawn is in it; a message is taken once it is drawn
  const drawn = (resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => resolve(performance.now());
    port2.postMessage(null);
  };
  window.afterPaint = (isThere) =>
    new Promise((resolve) => {
      const look = () => (isThere() ? drawn(resolve) : requestAnimationFrame(look));
      requestAnimationFrame(look);
    });
  // to ask for frame after frame until something is marked would have the browser draw each of them, which takes a tenth to a fifth of the time
  const waiting = new Map();
  const mark = performance.mark.bind(performance);
  performance.mark = (name, options) => {
    const made = mark(name, options);
    const resolve = waiting.get(name);
    waiting.delete(name);
    if (resolve !== undefined) requestAnimationFrame(() => drawn(resolve));
    return made;
  };
  window.afterMark = (name) => new Promise((resolve) => waiting.set(name, resolve));
}

/**
 * A visit with nothing cached.
 *
 * @returns time from the start of the navigation to the frame that shows the worked example's delay to cut [ms], and the
 * files of the app that were asked for until then
 */
async function firstDecision(browser, address) {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  const asked = new Set();
  page.on("request", (request) => asked.add(new URL(request.url()).pathname.split("/").at(-1)));
  await page.addInitScript(bringStopwatch);
  await page.addInitScript(() => {
    window.decided = window.afterPaint(() => /Cut to \d/.test(document.body?.textContent ?? ""));
  });
  await page.goto(address, { waitUntil: "commit" });
  const painted = await page.evaluate(() => window.decided);
  const files = assets().filter((name) => asked.has(name));
  await context.close();
  return { painted, files };
}

/** How long the bench has been looked at before a plan is opened from it [ms]. */
const LOOKED_AT = 4000;

/**
 * The worked example opened from a bench that has come to rest.
 *
 * @returns times from the click to the frames that show the answer, and all of the sheet that the window holds [ms]
 */
async function opening(browser, address) {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.addInitScript(bringStopwatch);
  await page.goto(address);
  const link = page.getByRole("link", { name: /Demo rocket, third flight/ }).first();
  await link.waitFor();
  await page.waitForTimeout(LOOKED_AT);
  await page.evaluate(() => {
    const answered = () => /Cut to \d/.test(document.querySelector(".plan-answer")?.textContent ?? "");
    // both columns reach below the window
    const filled = () =>
      [0.35, 0.75].every((across) =>
        document.elementFromPoint(across * innerWidth, innerHeight - 2)?.closest(".plan-sheet section"),
      );
    const opened = async ({ timeStamp }) => {
      const [answer, sheet] = await Promise.all([answered, filled].map((isThere) => afterPaint(isThere)));
      return { answer: answer - timeStamp, sheet: sheet - timeStamp };
    };
    window.opened = new Promise((resolve) => {
      addEventListener("click", (event) => resolve(opened(event)), { once: true, capture: true });
    });
  });
  await link.click();
  const times = await page.evaluate(() => window.opened);
  await context.close();
  return times;
}

/** The digits that are typed over one another, each with its place in the field: no wind comes twice. */
const digits = [..."123456789"]
  .map((digit) => [2, digit])
  .concat(
    [[0, "3"]],
    [..."12345678"].map((digit) => [2, digit]),
  );

/**
 * Changes the wind again and again, a digit at a time.
 *
 * @returns of each change, times from the key press to the frames with the first odds and with the settled ones [ms]
 */
async function changes(browser, address, traceFile) {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.addInitScript(bringStopwatch);
  await page.goto(address);
  await page
    .getByRole("link", { name: /Demo rocket, third flight/ })
    .first()
    .click();
  const settled = () => page.waitForFunction(() => performance.getEntriesByName("settled").length > 0);
  await settled();
  const wind = page.getByRole("textbox", { name: "Wind", exact: true });
  await wind.fill("2.0 m/s");
  await settled();
  await page.waitForTimeout(3000);
  if (traceFile !== undefined) {
    const categories = ["devtools.timeline", "disabled-by-default-devtools.timeline", "toplevel"];
    await browser.startTracing(page, { path: traceFile, categories });
  }
  const times = [];
  for (const [at, digit] of digits) {
    await wind.focus();
    await wind.evaluate((input, place) => input.setSelectionRange(place, place + 1), at);
    await page.evaluate(() => {
      window.changed = new Promise((resolve) => {
        const pressed = async ({ timeStamp }) => {
          const [first, all] = await Promise.all(["first-odds", "settled"].map((name) => afterMark(name)));
          resolve({ first: first - timeStamp, all: all - timeStamp });
        };
        addEventListener("keydown", pressed, { once: true, capture: true });
      });
    });
    await page.keyboard.press(digit);
    times.push(await page.evaluate(() => window.changed));
    await page.waitForTimeout(800);
  }
  if (traceFile !== undefined) await browser.stopTracing();
  await context.close();
  return times;
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
  const openings = [];
  for (let i = 0; i < 5; i += 1) openings.push(await opening(browser, served.address));
  const times = await changes(browser, served.address);
  const firsts = times.map(({ first }) => first);
  const settled = times.map(({ all }) => all);
  // tracing costs time of its own: tasks are looked at in a run by themselves
  const trace = join(folder, "trace.json");
  await changes(browser, served.address, trace);
  const tasks = longestTasks(trace);
  const rows = [
    ["first decision painted, new visitor [ms]", median(starts.map(({ painted }) => painted)), 1000],
    [
      "plan opened from the bench to its answer painted, median [ms]",
      median(openings.map(({ answer }) => answer)),
      null,
    ],
    ["to the sections in the window painted, median [ms]", median(openings.map(({ sheet }) => sheet)), null],
    ["key press to first odds painted, median [ms]", median(firsts), 2 * (1000 / 60)],
    ["key press to first odds painted, slowest [ms]", Math.max(...firsts), null],
    ["key press to all 10,000 draws painted, median [ms]", median(settled), 500],
    ["key press to all 10,000 draws painted, slowest [ms]", Math.max(...settled), null],
    ["longest task of the main thread while draws are flown [ms]", tasks[0] ?? 0, 50],
    ...(await longLogRows(browser, served.address, folder)),
    ["loaded before the first decision, gzipped [kB]", gzipped(starts[0].files), null],
    ["all of the app, gzipped [kB]", gzipped(assets()), null],
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
