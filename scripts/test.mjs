// Runs every test: units, reference data and command line, then the stories in a real browser; the last line counts them all.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import process from "node:process";

const folder = mkdtempSync(join(tmpdir(), "delaywright-tests-"));

/** One runner; what it counted, or a failure of its own where it ended without counting. */
function counted(name, command, words) {
  const tally = join(folder, name);
  const { status } = spawnSync(command, words, {
    stdio: "inherit",
    env: { STORIES: "short", ...process.env, TEST_TALLY: tally },
  });
  try {
    const count = JSON.parse(readFileSync(tally, "utf8"));
    return status !== 0 && count.failed === 0 ? { ...count, failed: 1 } : count;
  } catch {
    return { passed: 0, failed: 1, skipped: 0 };
  }
}

const node = process.execPath;
const runs = [counted("vitest", node, ["node_modules/vitest/vitest.mjs", "run"])];
const browser = spawnSync(node, ["scripts/chromium.mjs"], { stdio: "inherit" });
runs.push(
  browser.status === 0
    ? counted("stories", node, ["node_modules/@playwright/test/cli.js", "test", "--config", "web/playwright.config.ts"])
    : { passed: 0, failed: 1, skipped: 0 },
);
rmSync(folder, { recursive: true });

const sum = (key) => runs.reduce((total, run) => total + run[key], 0);
const skipped = sum("skipped");
process.stdout.write(
  `\n${sum("passed")} passed, ${sum("failed")} failed${skipped > 0 ? `, ${skipped} skipped` : ""}\n`,
);
process.exit(sum("failed") === 0 && sum("passed") > 0 ? 0 : 1);
