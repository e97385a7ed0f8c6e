import { readFileSync } from "node:fs";
import { WORKED_EXAMPLE } from "./pages/bench.js";
import { expect, story } from "./story.js";

/** What the app may do, by directive; `frame-ancestors` counts in a header only. */
const strict = {
  "default-src": "'none'",
  "script-src": "'self' 'wasm-unsafe-eval'",
  "style-src": "'self' 'unsafe-inline'",
  "img-src": "'self' data: blob:",
  "connect-src": "'self'",
  "worker-src": "'self'",
  "manifest-src": "'self'",
  "base-uri": "'none'",
  "form-action": "'none'",
};

function directives(policy: string): Record<string, string> {
  return Object.fromEntries(
    policy.split(";").map((each) => {
      const [name = "", ...sources] = each.trim().split(/\s+/);
      return [name, sources.join(" ")];
    }),
  );
}

story(
  "the page says what it may do, by header and by itself, and the browser holds it to that",
  async ({ page, guard }) => {
    const response = await page.goto("");
    const headers = response?.headers() ?? {};
    expect(directives(headers["content-security-policy"] ?? "")).toEqual({ ...strict, "frame-ancestors": "'none'" });
    expect(headers["x-content-type-options"]).toBe("nosniff");
    expect(headers["referrer-policy"]).toBe("no-referrer");
    expect(headers["cross-origin-opener-policy"]).toBe("same-origin");
    const own = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute("content");
    expect(directives(own ?? "")).toEqual(strict);

    await story.step("a script that slipped in would not run, and could not tell anybody", async () => {
      guard.expects(/content security policy: script-src/);
      guard.expects(/content security policy: connect-src/);
      guard.expects(/violates the (document's|following) Content Security Policy/);
      const ran = await page.evaluate(async () => {
        const told = new Promise<void>((resolve) => {
          addEventListener("securitypolicyviolation", ({ violatedDirective }) => {
            if (violatedDirective === "connect-src") resolve();
          });
        });
        const script = document.createElement("script");
        script.textContent = "window.__hit = 1";
        document.head.append(script);
        const fetched = await fetch("https://example.invalid/").then(
          () => true,
          () => false,
        );
        await told;
        return { script: "__hit" in window, fetched };
      });
      expect(ran).toEqual({ script: false, fetched: false });
    });
  },
);

story(
  "a whole day at the bench asks no other host, and the built page names none",
  async ({ bench, page, baseURL }) => {
    const asked = new Set<string>();
    page.context().on("request", (request) => asked.add(new URL(request.url()).origin));
    const plan = await bench.openPlan(WORKED_EXAMPLE);
    await plan.settled();
    const pad = await plan.goToPad();
    await pad.backToPlan();
    const home = await plan.goToBench();
    await home.exportEverything();
    for (const shelf of ["Rockets", "Motor types", "Motors in hand", "Tools", "Fields"]) {
      await home.openShelf(shelf);
      await page.goBack();
    }
    await home.goToImport();
    const own = new URL(baseURL ?? "").origin;
    expect([...asked].filter((origin) => origin !== own && origin !== "null")).toEqual([]);
    const built = readFileSync(new URL("../dist/index.html", import.meta.url), "utf8");
    expect(built).not.toMatch(/https?:\/\//);
  },
);
