import { existsSync, readFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { diskFiles, writeWhole } from "./io/files.js";
import type { Io } from "./io/io.js";
import { terminalProgress } from "./io/progress.js";
import { run } from "./run.js";

function colourWanted(): boolean {
  const { NO_COLOR, FORCE_COLOR, TERM } = process.env;
  if (NO_COLOR !== undefined && NO_COLOR !== "") return false;
  if (FORCE_COLOR !== undefined && FORCE_COLOR !== "" && FORCE_COLOR !== "0") return true;
  return process.stdout.isTTY === true && TERM !== "dumb";
}

/** Nobody reads on: that is their right. Anything else that cannot be written is told, once. */
let unwritable = false;
function onWriteError(error: NodeJS.ErrnoException): void {
  if (unwritable) return;
  unwritable = true;
  if (error.code === "EPIPE") process.exit(0);
  process.stderr.write(`cannot write to standard output: ${error.message}\n`);
  process.exit(2);
}
process.stdout.on("error", onWriteError);
process.stderr.on("error", () => {});

/** The built app: beside this bundle in a published package, in its own workspace in a checkout. */
const appFolder = ["./app/", "../../web/dist/"]
  .map((place) => fileURLToPath(new URL(place, import.meta.url)))
  .find((folder) => existsSync(`${folder}index.html`));

const io: Io = {
  out: (text) => {
    process.stdout.write(text);
  },
  err: (text) => {
    process.stderr.write(text);
  },
  files: diskFiles,
  now: () => new Date(),
  write: writeWhole,
  colour: colourWanted(),
  progress: terminalProgress(process.stderr),
  cores: availableParallelism(),
  openPool: async (workers) => {
    const { inProcessPool, workerPool } = await import("./io/pool.js");
    return workers === 1 ? inProcessPool() : workerPool(workers, new URL("./worker.mjs", import.meta.url));
  },
  serveApp: async (port, onlyThis) => {
    if (appFolder === undefined) return { ok: false, reason: "not-built" };
    const { serveApp } = await import("./io/app-server.js");
    try {
      const serving = await serveApp(appFolder, port, onlyThis);
      const ended = new Promise<void>((resolve) => {
        for (const signal of ["SIGINT", "SIGTERM"] as const)
          process.once(signal, () => void serving.close().then(resolve));
      });
      return { ok: true, port: serving.port, ended };
    } catch (error) {
      return { ok: false, reason: (error as NodeJS.ErrnoException).code ?? String(error) };
    }
  },
};

const { version } = JSON.parse(readFileSync(new URL("../package.json", import.meta.url), "utf8")) as {
  version: string;
};
const debug = process.env["DELAYWRIGHT_DEBUG"] === "1";
process.exitCode = await run(process.argv.slice(2), io, { version, debug });
