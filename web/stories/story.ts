import { test as base, type ConsoleMessage, expect, type Page, type Request } from "@playwright/test";
import { BenchPage } from "./pages/bench.js";

/** Watches a story: whatever goes wrong in the browser fails it, unless the story said that it would. */
export class Guard {
  private readonly origin: string;
  private readonly troubles: string[] = [];
  private readonly expected: RegExp[] = [];

  constructor(address: string) {
    this.origin = new URL(address).origin;
  }

  /** Says that this trouble belongs to the story; it must then come. */
  expects(trouble: RegExp): void {
    this.expected.push(trouble);
  }

  watch(page: Page): void {
    page.on("console", (message: ConsoleMessage) => {
      if (message.type() === "error") this.troubles.push(`console: ${message.text()}`);
    });
    page.on("pageerror", (error: Error) => this.troubles.push(`page error: ${error.message}`));
    page.on("crash", () => this.troubles.push("the page crashed"));
  }

  request(request: Request): void {
    const { protocol, origin } = new URL(request.url());
    const own = origin === this.origin || protocol === "data:" || protocol === "blob:";
    if (!own) this.troubles.push(`request to another host: ${request.url()}`);
  }

  /** Fails the story where something went wrong, or where what was to go wrong did not. */
  verdict(): void {
    const unexpected = this.troubles.filter((trouble) => !this.expected.some((pattern) => pattern.test(trouble)));
    const absent = this.expected.filter((pattern) => !this.troubles.some((trouble) => pattern.test(trouble)));
    expect(unexpected, "nothing goes wrong in the browser").toEqual([]);
    expect(absent.map(String), "what was to go wrong did").toEqual([]);
  }
}

interface Told {
  readonly guard: Guard;
  /** The bench, opened for the first time: each story has a browser that never saw the app. */
  readonly bench: BenchPage;
  /** It is told on a phone. */
  readonly narrow: boolean;
}

/** A story: a test with a browser of its own, so with an empty database, and with a guard. */
export const story = base.extend<Told>({
  guard: [
    async ({ context, baseURL }, use) => {
      const guard = new Guard(baseURL ?? "");
      await context.addInitScript(() => {
        addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI }) => {
          console.error(`content security policy: ${violatedDirective} ${blockedURI}`);
        });
      });
      context.on("request", (request) => guard.request(request));
      for (const page of context.pages()) guard.watch(page);
      context.on("page", (page) => guard.watch(page));
      await use(guard);
      guard.verdict();
    },
    { auto: true },
  ],
  bench: async ({ page }, use) => {
    const bench = new BenchPage(page);
    await bench.open();
    await use(bench);
  },
  narrow: async ({ viewport }, use) => {
    await use((viewport?.width ?? 0) <= 600);
  },
});

export { expect } from "@playwright/test";
