// Measures the ensemble against C and odex, and the whole `decide`: `npm run bench`, `npm run bench -- --strict` to fail on a miss.
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { dirname, join } from "node:path";
import process from "node:process";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const folder = mkdtempSync(join(tmpdir(), "delaywright-bench-"));

async function measureEngine() {
  const outfile = join(folder, "measure.mjs");
  await build({
    entryPoints: [join(root, "engine/bench/measure.ts")],
    outfile,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    conditions: ["source"],
    logLevel: "warning",
  });
  const { measure } = await import(pathToFileURL(outfile));
  return measure(join(root, "engine/bench/ensemble.c"), folder);
}

/** Median time and peak memory of the whole process, or null where there is no command line or no example to run. */
function measureDecide() {
  const bundle = join(root, "cli/dist/delaywright.mjs");
  const plan = join(root, "cli/examples/worked-example/plan.json");
  const builder = join(root, "cli/build.mjs");
  if (existsSync(builder)) spawnSync(process.execPath, [builder], { stdio: ["ignore", "ignore", "inherit"] });
  if (!existsSync(bundle) || !existsSync(plan)) return null;
  const command = [bundle, "decide", plan, "--draws", "2000"];
  const times = Array.from({ length: 7 }, () => {
    const start = performance.now();
    const { status, stderr } = spawnSync(process.execPath, command, { encoding: "utf8" });
    if (status !== 0 && status !== 3) throw new Error(`decide ended with ${status}: ${stderr}`);
    return (performance.now() - start) / 1000;
  });
  const peakFile = join(folder, "peak");
  const noting = `import { writeFileSync } from "node:fs";
    process.on("exit", () => writeFileSync(${JSON.stringify(peakFile)}, String(process.resourceUsage().maxRSS)));`;
  spawnSync(process.execPath, ["--import", `data:text/javascript,${encodeURIComponent(noting)}`, ...command]);
  return { seconds: times.sort((a, b) => a - b)[3], megabytes: Number(readFileSync(peakFile, "utf8")) / 1024 };
}

const flightsASecond = (value) => `${Math.round(value).toLocaleString("en")} flights/s`;
const atLeast = (target, value) => ({ value, pass: value >= target });
const atMost = (target, value) => ({ value, pass: value <= target });

function rowsOf({ pitching, aligned, odex, compiler }, decide) {
  const rows = [];
  const add = (what, shown, target = "", judged = {}) => rows.push({ what, shown, target, ...judged });
  const skip = (what, why) => rows.push({ what, shown: why, target: "" });
  add("pitching with hand-over, TypeScript", flightsASecond(pitching.typescript), "≥ 12,000", {
    ...atLeast(12_000, pitching.typescript),
  });
  for (const figures of [pitching, aligned]) {
    const { model, typescript, c, apart } = figures;
    if (model === "aligned") add("aligned, TypeScript", flightsASecond(typescript), "", { value: typescript });
    if (c === null) {
      skip(`${model}, C`, "skipped: no gcc here");
      continue;
    }
    add(`${model}, C`, flightsASecond(c), "", { value: c });
    const target = model === "pitching" ? ["≥ 0.6", atLeast(0.6, typescript / c)] : ["", { value: typescript / c }];
    add(`${model}, TypeScript / C`, (typescript / c).toFixed(2), ...target);
    add(`${model}, TypeScript and C apart`, `${apart.toExponential(1)} relative`, "≤ 1e-9", atMost(1e-9, apart));
  }
  const ratio = pitching.typescript / odex.rate;
  add("odex, same equations", `${odex.rate.toFixed(1)} flights/s`, "", { value: odex.rate });
  add("odex, tolerance", odex.tolerance.toExponential(0), "", { value: odex.tolerance });
  add("odex, apogee time", `${odex.error.toExponential(1)} relative`, "≤ 1e-4", atMost(1e-4, odex.error));
  add("pitching, TypeScript / odex", ratio.toFixed(0), "≥ 100", atLeast(100, ratio));
  for (const { model, errors } of [pitching, aligned]) {
    const { apogeeTime, apogeeHeight, openingAirspeed } = errors;
    add(`${model}, apogee time`, `${apogeeTime.toExponential(1)} relative`, "≤ 1e-4", atMost(1e-4, apogeeTime));
    add(`${model}, top`, `${apogeeHeight.toExponential(1)} relative`, "≤ 1e-4", atMost(1e-4, apogeeHeight));
    add(`${model}, airspeed at openings`, `${openingAirspeed.toFixed(4)} m/s`, "≤ 0.05 m/s", {
      ...atMost(0.05, openingAirspeed),
    });
  }
  if (decide === null) skip("decide, 2,000 draws", "skipped: no bundle or no worked example");
  else {
    add("decide, 2,000 draws, whole process", `${decide.seconds.toFixed(2)} s`, "≤ 0.7 s", atMost(0.7, decide.seconds));
    add("decide, peak memory", `${decide.megabytes.toFixed(0)} MB`, "< 200 MB", atMost(200, decide.megabytes));
  }
  add("C compiler", compiler ?? "none");
  return rows;
}

function print(rows) {
  const widths = ["what", "shown", "target"].map((key) => Math.max(...rows.map((row) => row[key].length)));
  for (const { what, shown, target, pass } of rows) {
    const verdict = pass === undefined ? "" : pass ? "pass" : "FAIL";
    console.log(
      [what.padEnd(widths[0]), shown.padStart(widths[1]), target.padEnd(widths[2]), verdict].join("  ").trimEnd(),
    );
  }
}

try {
  const measured = await measureEngine();
  const rows = rowsOf(measured, measureDecide());
  print(rows);
  const results = {
    date: new Date().toISOString().slice(0, 10),
    machine: { processor: cpus()[0].model, node: process.version, compiler: measured.compiler },
    seed: measured.seed,
    draws: measured.draws,
    rows: rows.map(({ what, shown, target, value, pass }) => ({ what, value: value ?? shown, target, pass })),
  };
  writeFileSync(join(root, "engine/bench/results.json"), `${JSON.stringify(results, null, 2)}\n`);
  // two sides that differ make every ratio meaningless: that fails whether asked to or not
  const disagree = rows.some(({ what, pass }) => what.endsWith("C apart") && pass === false);
  const missed = rows.some(({ pass }) => pass === false);
  process.exitCode = disagree || (missed && process.argv.includes("--strict")) ? 1 : 0;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
