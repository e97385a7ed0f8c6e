// Measures the ensemble against C and odex, the rigid body against C, the shortlist, the whole `decide`, and the reading of a long log: `npm run bench`, `npm run bench -- --strict` to fail on a miss.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { dirname, join } from "node:path";
import process from "node:process";
import { fileURLToPath, pathToFileURL } from "node:url";
import { bundled } from "./bundled.mjs";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const folder = mkdtempSync(join(tmpdir(), "delaywright-bench-"));

async function measureEngine() {
  const outfile = await bundled(join(root, "engine/bench/measure.ts"), join(folder, "measure.mjs"));
  const { measure, measureShortlist } = await import(pathToFileURL(outfile));
  const measured = measure(join(root, "engine/bench/ensemble.c"), join(root, "engine/bench/rigid.c"), folder);
  return { ...measured, shortlist: await measureShortlist() };
}

/** Reads a log of a million rows in a process of its own, whose peak memory holds the file too. */
async function measureLog() {
  const outfile = await bundled(join(root, "documents/bench/log.ts"), join(folder, "log.mjs"));
  const { status, stdout, stderr } = spawnSync(process.execPath, [outfile], { encoding: "utf8" });
  if (status !== 0) throw new Error(`the reading of a log ended with ${status}: ${stderr}`);
  return JSON.parse(stdout);
}

/** Builds the command line where there is one; null where it or its example is missing. */
function commandLine() {
  const bundle = join(root, "cli/dist/delaywright.mjs");
  const plan = join(root, "cli/examples/worked-example/plan.json");
  const builder = join(root, "cli/build.mjs");
  if (existsSync(builder)) spawnSync(process.execPath, [builder], { stdio: ["ignore", "ignore", "inherit"] });
  return existsSync(bundle) && existsSync(plan) ? { bundle, plan } : null;
}

/** Time of the whole process for a folder of motors that are all flown, on two workers [s]; the best of three. */
function measureShortlistProcess() {
  const command = commandLine();
  if (command === null) return null;
  const motor = JSON.parse(readFileSync(join(root, "cli/examples/larkmoor/demo-h150.motor.json"), "utf8"));
  const motors = join(folder, "motors");
  mkdirSync(motors);
  for (let i = 0; i < 200; i++) {
    const newtons = motor.thrust.newtons.map((each) => Number((each * (0.95 + i / 2000)).toFixed(2)));
    const one = { ...motor, name: `Bench ${i}`, thrust: { ...motor.thrust, newtons } };
    writeFileSync(join(motors, `bench-${i}.motor.json`), JSON.stringify(one));
  }
  const words = [command.bundle, "shortlist", command.plan, "--motors", motors, "--workers", "2", "--json"];
  const times = Array.from({ length: 3 }, () => {
    const start = performance.now();
    const { status, stdout, stderr } = spawnSync(process.execPath, words, { encoding: "utf8", maxBuffer: 1e8 });
    const flown = status === 0 ? JSON.parse(stdout).ranked.length : 0;
    if (flown !== 200) throw new Error(`shortlist ended with ${status}, ${flown} motors flown: ${stderr}`);
    return (performance.now() - start) / 1000;
  });
  return Math.min(...times);
}

/** Median time and peak memory of the whole process, or null where there is no command line or no example to run. */
function measureDecide() {
  const found = commandLine();
  if (found === null) return null;
  const { bundle, plan } = found;
  const command = [bundle, "decide", plan, "--draws", "2000"];
  const times = Array.from({ length: 7 }, () => {
    const start = performance.now();
    const { status, stderr } = spawnSync(process.execPath, command, { encoding: "utf8" });
    if (status !== 0 && status !== 3) throw new Error(`decide ended with ${status}: ${stderr}`);
    return (performance.now() - start) / 1000;
  });
  const peakFile = join(folder, "peak");
  const noting = `import { writeFileSync } from "node:fs";
    process.on("exit", () => writeFileSync(${JSON.stringify(peakFile)}, JSON.stringify(process.resourceUsage())));`;
  spawnSync(process.execPath, ["--import", `data:text/javascript,${encodeURIComponent(noting)}`, ...command]);
  const { maxRSS, userCPUTime, systemCPUTime } = JSON.parse(readFileSync(peakFile, "utf8"));
  return {
    seconds: times.sort((a, b) => a - b)[3],
    processorSeconds: (userCPUTime + systemCPUTime) / 1e6,
    megabytes: maxRSS / 1024,
  };
}

const flightsASecond = (value) => `${Math.round(value).toLocaleString("en")} flights/s`;
const atLeast = (target, value) => ({ value, pass: value >= target });
const atMost = (target, value) => ({ value, pass: value <= target });

function rowsOf({ pitching, aligned, rigid, flightsAlone, odex, compiler, shortlist }, decide, shortlistProcess, log) {
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
  add("pitching flights alone, TypeScript", flightsASecond(flightsAlone), "", { value: flightsAlone });
  for (const [how, { rate, tolerance, error, calls }] of [
    ["as exact as the draws must be", odex.asTheyMust],
    ["as exact as the draws are", odex.asTheyAre],
  ]) {
    add(`odex, ${how}`, `${rate.toFixed(0)} flights/s`, "", { value: rate });
    const cost = `${error.toExponential(1)} at ${tolerance.toExponential(0)}, ${calls.toFixed(0)} calls`;
    add(`odex, ${how}: apogee time`, cost, "", { value: error });
    // odex only flies, so it is held against draws that are only flown; with all openings judged, for comparison
    const ratio = flightsAlone / rate;
    const judged = how.endsWith("draws are") ? ["≥ 100", atLeast(100, ratio)] : ["", { value: ratio }];
    add(`flights alone, TypeScript / odex, ${how}`, ratio.toFixed(0), ...judged);
    const withJudging = pitching.typescript / rate;
    add(`with odds, TypeScript / odex, ${how}`, withJudging.toFixed(0), "", { value: withJudging });
  }
  for (const { model, errors } of [pitching, aligned]) {
    const { apogeeTime, apogeeHeight, openingAirspeed } = errors;
    add(`${model}, apogee time`, `${apogeeTime.toExponential(1)} relative`, "≤ 1e-4", atMost(1e-4, apogeeTime));
    add(`${model}, top`, `${apogeeHeight.toExponential(1)} relative`, "≤ 1e-4", atMost(1e-4, apogeeHeight));
    add(`${model}, airspeed at openings`, `${openingAirspeed.toFixed(4)} m/s`, "≤ 0.05 m/s", {
      ...atMost(0.05, openingAirspeed),
    });
  }
  const flightTime = 1000 * rigid.flight;
  add("rigid, one flight to the ground at 1e-9", `${flightTime.toFixed(1)} ms`, "≤ 10 ms", atMost(10, flightTime));
  add("rigid, guide to top, TypeScript", flightsASecond(rigid.typescript), "", { value: rigid.typescript });
  if (rigid.c === null) skip("rigid, C", "skipped: no gcc here");
  else {
    const { typescript, c, apart } = rigid;
    add("rigid, guide to top, C", flightsASecond(c), "", { value: c });
    add("rigid, TypeScript / C", (typescript / c).toFixed(2), "", { value: typescript / c });
    add("rigid, TypeScript and C apart", `${apart.toExponential(1)} relative`, "≤ 1e-9", atMost(1e-9, apart));
  }
  const { seconds, firstTen, growth, flying } = shortlist;
  add("shortlist, 200 motors × 500 draws, two cores", `${seconds.toFixed(2)} s`, "≤ 5 s", atMost(5, seconds));
  add("shortlist, first ten rows, two cores", `${firstTen.toFixed(2)} s`, "≤ 0.4 s", atMost(0.4, firstTen));
  add("shortlist, time a motor: 200 motors / 50", growth.toFixed(2), "≤ 1.2", atMost(1.2, growth));
  add("shortlist, time in draws / all time", flying.toFixed(2), "≥ 0.7", atLeast(0.7, flying));
  if (shortlistProcess === null) skip("shortlist, whole process", "skipped: no bundle or no worked example");
  else
    add("shortlist, 200 motors, whole process, two workers", `${shortlistProcess.toFixed(2)} s`, "≤ 5 s", {
      ...atMost(5, shortlistProcess),
    });
  if (decide === null) skip("decide, 2,000 draws", "skipped: no bundle or no worked example");
  else {
    add("decide, 2,000 draws, whole process", `${decide.seconds.toFixed(2)} s`, "≤ 0.7 s", atMost(0.7, decide.seconds));
    const { processorSeconds, megabytes } = decide;
    add("decide, processor time", `${processorSeconds.toFixed(2)} s`, "", { value: processorSeconds });
    add("decide, peak memory", `${megabytes.toFixed(0)} MB`, "< 200 MB", atMost(200, megabytes));
  }
  add("log of 1,000,000 rows, read", `${log.seconds.toFixed(2)} s`, "≤ 3 s", atMost(3, log.seconds));
  add("log of 1,000,000 rows, peak memory", `${log.megabytes.toFixed(0)} MB`, "≤ 500 MB", atMost(500, log.megabytes));
  add("log, time a row: 1,000,000 rows / 250,000", log.growth.toFixed(2), "≤ 1.2", atMost(1.2, log.growth));
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
  const rows = rowsOf(measured, measureDecide(), measureShortlistProcess(), await measureLog());
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
