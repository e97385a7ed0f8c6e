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

/** Stories that a slow machine needs too long for: `npm run stories` tells them all, `npm test` leaves these out. */
const long = [
  "access",
  "faults-computing",
  "faults-keeping",
  "hostile",
  "keyboard",
  "migrations",
  "offline",
  "policy",
  "tabs",
];
const all = process.env["STORIES"] !== "short";

export default defineConfig({
  testDir: "stories",
  testMatch: "*.story.ts",
  testIgnore: all ? [] : long.map((name) => `**/${name}.story.ts`),
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
    trace: "retain-on-failure",
    locale: "en-GB",
  },
  projects: [
    { name: "desk", use: { viewport: { width: 1440, height: 900 } } },
    {
      name: "phone",
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
