import { writeFileSync } from "node:fs";
import type { Reporter, TestModule } from "vitest/node";

/** Prints one plain line at the end, for runners that read nothing else: how many tests passed and failed. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    let passed = 0;
    let failed = unhandled.length;
    let skipped = 0;
    for (const module of modules) {
      if (module.errors().length > 0) failed += 1;
      for (const test of module.children.allTests()) {
        const state = test.result().state;
        if (state === "passed") passed += 1;
        else if (state === "failed") failed += 1;
        else skipped += 1;
      }
    }
    const tally = process.env["TEST_TALLY"];
    if (tally !== undefined) writeFileSync(tally, JSON.stringify({ passed, failed, skipped }));
    process.stdout.write(`\n${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}\n`);
  }
}
