import { writeFileSync } from "node:fs";
import type { FullResult, Reporter, Suite } from "@playwright/test/reporter";

/** Counts the stories for the line that closes all tests. A story that passed only when tried again is told as such. */
export default class ClosingLine implements Reporter {
  private suite: Suite | undefined;

  onBegin(_config: unknown, suite: Suite): void {
    this.suite = suite;
  }

  onEnd(result: FullResult): void {
    const outcomes = this.suite?.allTests().map((test) => test.outcome()) ?? [];
    const count = (...wanted: string[]): number => outcomes.filter((outcome) => wanted.includes(outcome)).length;
    const [passed, failed, skipped] = [count("expected", "flaky"), count("unexpected"), count("skipped")];
    const broken = failed === 0 && result.status !== "passed" ? 1 : 0;
    const tally = process.env["TEST_TALLY"];
    if (tally !== undefined) writeFileSync(tally, JSON.stringify({ passed, failed: failed + broken, skipped }));
    const again = count("flaky");
    const told = again === 0 ? "" : `, ${again} of them only when tried again`;
    process.stdout.write(`\nstories: ${passed} passed${told}, ${failed + broken} failed\n`);
  }
}
