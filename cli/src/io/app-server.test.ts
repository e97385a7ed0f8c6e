import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { type Serving, serveApp } from "./app-server.js";

const root = mkdtempSync(join(tmpdir(), "delaywright-app-"));
const folder = join(root, "app");
mkdirSync(join(folder, "assets"), { recursive: true });
writeFileSync(join(folder, "index.html"), "<!doctype html><title>bench</title>");
writeFileSync(join(folder, "assets", "main-1.js"), "export {};");
writeFileSync(join(root, "secret.txt"), "not for you");
afterAll(() => rmSync(root, { recursive: true }));

interface Answered {
  readonly status: number | undefined;
  readonly headers: NodeJS.Dict<string | string[]>;
  readonly body: string;
}

/** Asks with the path exactly as given: a client that tidies paths would hide an attack. */
function ask(port: number, path: string, options: { host?: string; method?: string } = {}): Promise<Answered> {
  return new Promise((resolve, reject) => {
    request(
      {
        port,
        path,
        host: "127.0.0.1",
        method: options.method ?? "GET",
        headers: { host: options.host ?? `127.0.0.1:${port}` },
      },
      (response) => {
        let body = "";
        response.on("data", (data) => {
          body += data;
        });
        response.on("end", () => resolve({ status: response.statusCode, headers: response.headers, body }));
      },
    )
      .on("error", reject)
      .end();
  });
}

async function served<T>(use: (serving: Serving) => Promise<T>, port = 0, onlyThis = false): Promise<T> {
  const serving = await serveApp(folder, port, onlyThis);
  try {
    return await use(serving);
  } finally {
    await serving.close();
  }
}

test("serveApp() serves the page under a strict policy and keeps hashed files for good", () =>
  served(async ({ port }) => {
    const page = await ask(port, "/");
    expect(page.status).toBe(200);
    expect(page.headers["content-security-policy"]).toContain("default-src 'none'");
    expect(page.headers["content-security-policy"]).toContain("frame-ancestors 'none'");
    expect(page.headers["cache-control"]).toBe("no-cache");
    const script = await ask(port, "/assets/main-1.js");
    expect(script.headers["content-type"]).toContain("javascript");
    expect(script.headers["cache-control"]).toContain("immutable");
  }));

test("serveApp() serves a build that is made while it serves", () =>
  served(async ({ port }) => {
    const late = join(folder, "assets", "main-2.js");
    expect((await ask(port, "/assets/main-2.js")).status).toBe(404);
    writeFileSync(late, "export {};");
    expect((await ask(port, "/assets/main-2.js")).status).toBe(200);
    rmSync(late);
    expect((await ask(port, "/assets/main-2.js")).status).toBe(404);
  }));

test.each([
  "/../secret.txt",
  "/%2e%2e/secret.txt",
  "/assets/..%2f..%2fsecret.txt",
  "/.%00/secret.txt",
  "/assets",
  "/gone.html",
])("serveApp() gives nothing outside its folder: %s", (path) =>
  served(async ({ port }) => {
    const { status, body } = await ask(port, path);
    expect(status).not.toBe(200);
    expect(body).not.toContain("not for you");
  }),
);

test("serveApp() answers under this machine's own names alone, and reading alone", () =>
  served(async ({ port }) => {
    expect((await ask(port, "/", { host: "elsewhere.example" })).status).toBe(421);
    expect((await ask(port, "/", { host: `localhost:${port}` })).status).toBe(200);
    expect((await ask(port, "/", { method: "POST" })).status).toBe(405);
  }));

test("serveApp() goes on to the next port where one is taken, unless that very one was asked for", () =>
  served(async ({ port }) => {
    await served(async (second) => expect(second.port).toBeGreaterThan(port), port);
    await expect(serveApp(folder, port, true)).rejects.toMatchObject({ code: "EADDRINUSE" });
  }));
