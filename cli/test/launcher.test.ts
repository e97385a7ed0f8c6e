import { spawn, spawnSync } from "node:child_process";
import {
  closeSync,
  cpSync,
  existsSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { demoFolder } from "./demo.js";

const cli = dirname(dirname(fileURLToPath(import.meta.url)));
const launcher = join(cli, "bin", "delaywright.mjs");
const plan = join(demoFolder, "plan.json");
const folder = mkdtempSync(join(tmpdir(), "delaywright-launcher-"));
afterAll(() => rmSync(folder, { recursive: true }));

interface Ended {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

function start(words: readonly string[], environment: Readonly<Record<string, string>> = {}, file = launcher): Ended {
  const env = { PATH: process.env["PATH"] ?? "", ...environment };
  return spawnSync(process.execPath, [file, ...words], { encoding: "utf8", env, timeout: 60_000 });
}

beforeAll(() => {
  expect(start(["--version"]).status).toBe(0);
});

describe("delaywright, as a process", () => {
  test("decides a plan: the answer on standard output alone, exit code 0", () => {
    const { status, stdout, stderr } = start(["decide", plan]);
    expect(stdout).toMatch(/^Cut to 9 s: /);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  });

  test("gives the same figures with 1, 2 and 4 workers", () => {
    const [one, two, four] = ["1", "2", "4"].map((workers) =>
      start(["decide", plan, "--json", "--draws", "1100", "--workers", workers]),
    );
    expect(JSON.parse(one?.stdout ?? "").draws).toBe(1100);
    expect(two?.stdout).toBe(one?.stdout);
    expect(four?.stdout).toBe(one?.stdout);
    expect([one, two, four].map((each) => each?.status)).toEqual([0, 0, 0]);
  });

  test.each([
    [["decide", "gone.json"], 2],
    [["nonsense"], 2],
    [["window", plan, "--model", "rigid"], 2],
    [["check", plan, "gone.json"], 2],
    [["cut", join(demoFolder, "two-collar.tool.json"), "--longest", "14s", "--to", "10s"], 3],
  ])("%j ends with %i, without a stack trace", (words, code) => {
    const { status, stdout, stderr } = start(words);
    expect(status).toBe(code);
    expect(stdout + stderr).not.toMatch(/\n\s+at |node:internal/);
    expect((stdout + stderr).length).toBeGreaterThan(20);
  });

  test("a reader who stops early is no failure", async () => {
    const child = spawn(process.execPath, [launcher, "fly", plan, "--csv", "--every", "0.001s"]);
    let stderr = "";
    child.stderr.on("data", (data) => {
      stderr += data;
    });
    child.stdout.once("data", () => child.stdout.destroy());
    const code = await new Promise((resolve) => child.on("exit", resolve));
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
  });

  test.runIf(existsSync("/dev/full"))("says so where its answer cannot be written", () => {
    const full = openSync("/dev/full", "w");
    const { status, stderr } = spawnSync(process.execPath, [launcher, "decide", plan, "--draws", "16"], {
      encoding: "utf8",
      stdio: ["ignore", full, "pipe"],
    });
    closeSync(full);
    expect(stderr).toMatch(/^cannot write to standard output/);
    expect(stderr).not.toMatch(/\n\s+at /);
    expect(status).toBe(2);
  });

  test("colours only where asked to: NO_COLOR wins", () => {
    const words = ["decide", plan, "--draws", "16"];
    expect(start(words).stdout).not.toContain("\u001b");
    expect(start(words, { FORCE_COLOR: "1" }).stdout).toContain("\u001b");
    expect(start(words, { FORCE_COLOR: "1", NO_COLOR: "1" }).stdout).not.toContain("\u001b");
  });

  test("runs as published: the bundle, without sources and without node_modules", () => {
    const published = join(folder, "published");
    for (const part of ["bin", "dist", "package.json"])
      cpSync(join(cli, part), join(published, part), { recursive: true });
    const { status, stdout, stderr } = start(
      ["decide", plan, "--json", "--draws", "600", "--workers", "2"],
      {},
      join(published, "bin", "delaywright.mjs"),
    );
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(JSON.parse(stdout).toCut.delay).toBe(9);
  });

  test("rebuilds when a source is newer, in several processes at once, and leaves nothing half written", async () => {
    const copy = join(folder, "checkout");
    const root = dirname(cli);
    for (const part of [
      "engine/src",
      "engine/package.json",
      "documents/src",
      "documents/package.json",
      "cli/src",
      "cli/bin",
      "cli/build.mjs",
      "cli/package.json",
    ])
      cpSync(join(root, part), join(copy, part), { recursive: true });
    cpSync(join(root, "node_modules"), join(copy, "node_modules"), {
      recursive: true,
      verbatimSymlinks: true,
      filter: (path) => wanted(path),
    });
    const bin = join(copy, "cli", "bin", "delaywright.mjs");
    const both = [0, 1].map(
      () =>
        new Promise<number | null>((resolve) =>
          spawn(process.execPath, [bin, "--version"], { stdio: "ignore" }).on("exit", resolve),
        ),
    );
    expect(await Promise.all(both)).toEqual([0, 0]);
    const main = join(copy, "cli", "src", "args", "help.ts");
    writeFileSync(main, readFileSync(main, "utf8").replace("Exit codes: 0 done", "Exit codes, newly: 0 done"));
    expect(start(["--help"], {}, bin).stdout).toContain("Exit codes, newly");
    expect(readdirSync(join(copy, "cli", "dist")).filter((name) => name.endsWith(".tmp"))).toEqual([]);
  });
});

/** What a build needs of node_modules. */
function wanted(path: string): boolean {
  const inside = path.split("node_modules/")[1];
  if (inside === undefined) return true;
  return /^(@delaywright|@esbuild|@colors|esbuild|commander|zod|papaparse|cli-progress|cli-table3|picocolors|string-width|strip-ansi|ansi-regex|emoji-regex|is-fullwidth-code-point|sirv|totalist|mrmime|@polka|uqr)(\/|$)/.test(
    inside,
  );
}
