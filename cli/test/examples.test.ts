import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, test } from "vitest";

const cli = dirname(dirname(fileURLToPath(import.meta.url)));
const examples = join(cli, "examples");
const names = readdirSync(examples, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && existsSync(join(examples, entry.name, "command.txt")))
  .map((entry) => entry.name);

/** Runs every line of an example's command.txt in its folder: each command, what it printed, and its exit code. */
function transcript(name: string): string {
  const folder = join(examples, name);
  const commands = readFileSync(join(folder, "command.txt"), "utf8")
    .split("\n")
    .filter((line) => line.trim() !== "");
  return commands
    .map((command) => {
      const words = command.trim().split(/\s+/);
      const ended = spawnSync(process.execPath, [join(cli, "bin", "delaywright.mjs"), ...words], {
        cwd: folder,
        encoding: "utf8",
      });
      return `$ delaywright ${words.join(" ")}\n${ended.stdout}${ended.stderr}exit code ${ended.status}\n`;
    })
    .join("\n");
}

describe("examples", () => {
  // where sources are newer the first command builds from them, and says so
  beforeAll(() => {
    spawnSync(process.execPath, [join(cli, "bin", "delaywright.mjs"), "--version"]);
  });

  test("there are some", () => expect(names.length).toBeGreaterThan(0));

  // to change one, with its reason in the commit: UPDATE_EXAMPLE=name (or all) npx vitest run --project cli examples
  test.each(names)("%s prints what its expected.txt says", (name) => {
    const path = join(examples, name, "expected.txt");
    const printed = transcript(name);
    if ([name, "all"].includes(process.env["UPDATE_EXAMPLE"] ?? "")) writeFileSync(path, printed);
    expect(printed).toBe(readFileSync(path, "utf8"));
  });
});
