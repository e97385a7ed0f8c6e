import { spawn } from "node:child_process";
import process from "node:process";
import { fileURLToPath } from "node:url";

const launcher = fileURLToPath(new URL("../../cli/bin/delaywright.mjs", import.meta.url));

/** Builds the app where it is stale and serves it as a flyer gets it: by `delaywright app`, on a port that is free. */
export async function serveBuilt() {
  const child = spawn(process.execPath, [launcher, "app", "--port", "0"], { stdio: ["ignore", "pipe", "inherit"] });
  const address = await new Promise((resolve, reject) => {
    let told = "";
    child.stdout.on("data", (data) => {
      told += data;
      const found = /http:\/\/127\.0\.0\.1:\d+\//.exec(told);
      if (found) resolve(found[0]);
    });
    child.once("exit", (code) => reject(new Error(`the app was not served: code ${code}`)));
  });
  return {
    address,
    close: () =>
      new Promise((resolve) => {
        child.once("exit", resolve);
        child.kill("SIGTERM");
      }),
  };
}
