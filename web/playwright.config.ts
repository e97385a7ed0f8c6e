import { defineConfig, devices } from "@playwright/test";
import { findChromium } from "../scripts/chromium.mjs";

const executablePath = findChromium();
const launchOptions = {
  ...(executablePath === undefined ? {} : { executablePath }),
  args: [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
  ],
};
const port = Number(process.env["STORY_PORT"] ?? 4187);

/** Stories that `npm test` leaves out by device, so that it ends in time on two cores; `npm run stories` tells them all. */
const left = {
  desk: ["access", "card-desk", "faults-computing", "hostile", "migrations", "prep", "shortlist", "tabs"],
  phone: [
    "access",
    "by-hand",
    "card",
    "card-desk",
    "checks",
    "cut",
    "debrief",
    "export",
    "faults-computing",
    "faults-keeping",
    "going",
    "hostile",
    "label",
    "libraries",
    "migrations",
    "offline",
    "policy",
    "steady",
    "tabs",
    "units",
  ],
} as const;

const leftOut = (device: keyof typeof left): string[] =>
  process.env["STORIES"] === "short" ? left[device].map((name) => `**/${name}.story.ts`) : [];

export default defineConfig({
  testDir: "stories",
  testMatch: "*.story.ts",
  fullyParallel: true,
  workers: 1,
  retries: 1,
  timeout: 480_000,
  expect: { timeout: 45_000 },
  reporter: [["list"], ["./stories/closing-line.ts"]],
  outputDir: "../coverage/stories",
  use: {
    baseURL: `http://127.0.0.1:${port}/`,
    launchOptions,
    actionTimeout: 40_000,
    trace: "on-first-retry",
    locale: "en-GB",
  },
  projects: [
    { name: "desk", testIgnore: leftOut("desk"), use: { viewport: { width: 1440, height: 900 } } },
    {
      name: "phone",
      testIgnore: leftOut("phone"),
      use: { ...devices["Pixel 7"], viewport: { width: 390, height: 844 }, deviceScaleFactor: 2 },
      grepInvert: /@desk/,
    },
  ],
  webServer: {
    command: `node ../cli/bin/delaywright.mjs app --port ${port}`,
    port,
    timeout: 120_000,
    reuseExistingServer: false,
  },
});
