import { join } from "node:path";
import { longestOwnTasks } from "./tasks.mjs";

/** How a flyer meets a long log; the phone is a quarter as fast as this machine. */
const devices = {
  desk: { shape: { viewport: { width: 1440, height: 900 } }, slower: 1 },
  phone: {
    shape: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 },
    slower: 4,
  },
};

const PATIENCE = 240_000;
const categories = ["devtools.timeline", "disabled-by-default-devtools.timeline", "toplevel"];

/** Presses of the plot's buttons: in, along, out. */
const presses = ["Climb", "Closer", "Closer", "Later", "Earlier", "Farther", "Whole flight", "Closer", "Climb"];

/**
 * Runs in the page: notes the time between frames in `window.frameTimes` [ms]; `window.whenWords(selector, words)` resolves to
 * the time when an element says something. It looks at little: what is measured must not be slowed by the question.
 */
function bringFrames() {
  window.whenWords = (selector, words, patience) =>
    new Promise((resolve, reject) => {
      const latest = performance.now() + patience;
      const look = () => {
        const there = [...document.querySelectorAll(selector)].some((each) => each.textContent.startsWith(words));
        if (there) resolve(performance.now());
        else if (performance.now() > latest) reject(new Error(`"${words}" was never said`));
        else requestAnimationFrame(look);
      };
      look();
    });
  window.frameTimes = [];
  let last = 0;
  const tick = (now) => {
    window.frameTimes.push(now - last);
    last = now;
    requestAnimationFrame(tick);
  };
  requestAnimationFrame(tick);
}

const middle = ({ x, y, width, height }) => ({ x: x + width / 2, y: y + height / 2 });

/** A plan's debrief with a log to be taken in. */
class LongLog {
  constructor({ browser, page, cdp, touch, folder }) {
    Object.assign(this, { browser, page, cdp, touch, folder });
  }

  /** Longest task of the main thread while something is done [ms]. */
  async task(name, act) {
    const file = join(this.folder, `${name}.json`);
    await this.browser.startTracing(this.page, { path: file, categories });
    await act();
    await this.browser.stopTracing();
    return longestOwnTasks(file)[0] ?? 0;
  }

  /** Longest task, and slowest frame, while the plot is moved [ms]. Nothing is asked of the page meanwhile. */
  async moved(name, act) {
    let frame = 0;
    const task = await this.task(name, async () => {
      await this.page.waitForTimeout(500);
      await this.page.evaluate(() => window.frameTimes.splice(0));
      await act();
      frame = await this.page.evaluate(() => Math.max(...window.frameTimes));
    });
    return { task, frame };
  }

  /** When an element says something [ms]. */
  said(selector, words) {
    return this.page.evaluate((given) => window.whenWords(...given), [selector, words, PATIENCE]);
  }

  /** Time until an element says something after something was done [ms]. */
  async timed(act, selector, words) {
    const since = await this.page.evaluate(() => performance.now());
    const [there] = await Promise.all([this.said(selector, words), act()]);
    return there - since;
  }

  /** Until its columns are shown [ms]. */
  async choose(log) {
    const chooser = this.page.waitForEvent("filechooser");
    await this.page.getByRole("button", { name: "Choose the altimeter's log" }).click();
    const given = await chooser;
    return this.timed(() => given.setFiles(log), ".log-shown .debrief-do", "The columns are right");
  }

  /** Until its events are shown [ms]; ends when all draws are flown. */
  async take() {
    const button = this.page.getByRole("button", { name: /take this log$/i });
    await button.scrollIntoViewIfNeeded();
    const { x, y } = middle(await button.boundingBox());
    const time = await this.timed(() => this.tap(x, y), ".debrief-events th", "Burnout");
    await this.said(".debrief [role=status]", "The debrief is ready.");
    return time;
  }

  tap(x, y) {
    return this.touch ? this.page.touchscreen.tap(x, y) : this.page.mouse.click(x, y);
  }

  async zoom() {
    const tools = this.page.getByRole("toolbar", { name: "What of the flight is shown" });
    await tools.scrollIntoViewIfNeeded();
    const at = {};
    for (const name of new Set(presses))
      at[name] = middle(await tools.getByRole("button", { name, exact: true }).boundingBox());
    return this.moved("zoom", async () => {
      for (const name of presses) {
        const { x, y } = at[name];
        await this.tap(x, y);
        await this.page.waitForTimeout(400);
      }
    });
  }

  /** Takes the top in hand and drags it there and back, by mouse or by finger. */
  async drag() {
    await this.page.getByRole("button", { name: /^Top: move it/ }).click();
    const handle = this.page.getByRole("slider", { name: /^Move/ });
    await handle.scrollIntoViewIfNeeded();
    await this.page.waitForTimeout(1000);
    const { x, y } = middle(await handle.boundingBox());
    const way = Array.from({ length: 75 }, (_, i) => ({ x: x + 60 * Math.sin((i + 1) / 12), y }));
    const finger = (type, touchPoints) => this.cdp.send("Input.dispatchTouchEvent", { type, touchPoints });
    return this.moved("drag", async () => {
      if (this.touch) await finger("touchStart", [{ x, y }]);
      else {
        await this.page.mouse.move(x, y);
        await this.page.mouse.down();
      }
      for (const at of way) await (this.touch ? finger("touchMove", [at]) : this.page.mouse.move(at.x, at.y));
      await (this.touch ? finger("touchEnd", []) : this.page.mouse.up());
    });
  }

  /** Longest task while the bench is exported with the log's file [ms]. */
  async exported() {
    await this.page.getByRole("link", { name: "Bench", exact: true }).click();
    const button = this.page.getByRole("button", { name: "Export everything" });
    await button.scrollIntoViewIfNeeded();
    await this.page.waitForTimeout(1000);
    const { x, y } = middle(await button.boundingBox());
    return this.task("export", async () => {
      const saved = this.page.waitForEvent("download", { timeout: PATIENCE });
      await this.tap(x, y);
      await (await saved).path();
    });
  }
}

/**
 * Takes a long log into a plan's debrief, moves its plot, and exports the bench with it.
 *
 * @param log path of the file
 * @param folder where traces are put
 * @param device `desk` or `phone`
 * @returns times [ms]: until its columns are shown, until its events are shown once it was taken, and the longest tasks of
 * the main thread and slowest frames meanwhile
 */
export async function longLog({ browser, address, log, folder, device }) {
  const { shape, slower } = devices[device];
  const context = await browser.newContext(shape);
  const page = await context.newPage();
  await page.addInitScript(bringFrames);
  await page.goto(`${address}#/plan/worked-example.plan.json`);
  await page.waitForFunction(() => performance.getEntriesByName("settled").length > 0, undefined, {
    timeout: PATIENCE,
  });
  const heading = page.getByRole("heading", { name: "Debrief", level: 2 });
  await heading.scrollIntoViewIfNeeded();
  const choose = page.getByRole("button", { name: "Choose the altimeter's log" });
  if (!(await choose.isVisible())) await heading.click();
  await choose.scrollIntoViewIfNeeded();
  await page.waitForTimeout(3000);
  const cdp = await context.newCDPSession(page);
  await cdp.send("Emulation.setCPUThrottlingRate", { rate: slower });
  const debrief = new LongLog({ browser, page, cdp, touch: device === "phone", folder });
  const times = {};
  const read = await debrief.task("read", async () => {
    times.columns = await debrief.choose(log);
  });
  const taken = await debrief.task("take", async () => {
    times.events = await debrief.take();
  });
  const zoomed = await debrief.zoom();
  const dragged = await debrief.drag();
  const exported = await debrief.exported();
  await context.close();
  return { ...times, read, taken, zoomed, dragged, exported };
}
