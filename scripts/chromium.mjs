// Finds Chromium for the stories in a real browser, or installs it where that is possible: `node scripts/chromium.mjs`.
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import process from "node:process";
import { fileURLToPath } from "node:url";

const usual = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/snap/bin/chromium", "/usr/lib/chromium/chromium"];

/** Path of a Chromium: the one that CHROMIUM_PATH names, or one in the usual places; undefined where there is none. */
export function findChromium() {
  const named = process.env["CHROMIUM_PATH"];
  if (named !== undefined && named !== "") return existsSync(named) ? named : undefined;
  return usual.find((path) => existsSync(path));
}

function isDebian() {
  try {
    return /^ID(_LIKE)?=.*debian/m.test(readFileSync("/etc/os-release", "utf8"));
  } catch {
    return false;
  }
}

/** As `findChromium`; installs it on Debian as root. */
export function readyChromium() {
  const found = findChromium();
  if (found !== undefined) return found;
  if (isDebian() && process.getuid?.() === 0 && !process.env["CHROMIUM_PATH"]) {
    process.stderr.write("The stories need Chromium: installing it (apt-get install -y chromium).\n");
    const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
    const install = () =>
      spawnSync("apt-get", ["install", "-y", "chromium"], { stdio: ["ignore", "ignore", "inherit"], env });
    if (install().status !== 0) {
      spawnSync("apt-get", ["update"], { stdio: ["ignore", "ignore", "inherit"], env });
      install();
    }
  }
  return findChromium();
}

if (process.argv[1] === fileURLToPath(import.meta.url) && readyChromium() === undefined) {
  process.stderr.write(
    "The stories run in a real browser and found no Chromium. Install it (on Debian as root: apt-get install -y chromium) or name it: CHROMIUM_PATH=/path/to/chromium\n",
  );
  process.exit(1);
}
