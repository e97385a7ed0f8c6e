// Writes the demo's altimeter logs, cli/examples/debrief/*.csv, and debriefs the first two: `node scripts/demo-logs.mjs`. All of it is made up.
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import process from "node:process";
import { fileURLToPath, pathToFileURL } from "node:url";
import { normal } from "./seeded.mjs";

/** Where the logs lie, beside the plan that they are flights of. */
export const demoLogsFolder = join(dirname(dirname(fileURLToPath(import.meta.url))), "cli", "examples", "debrief");

/** Time on the pad before ignition, and on the ground after landing [s]. */
const padTime = 20;
const groundTime = 8;

/**
 * The three flights as they were: factors on the plan's drag and impulse, the delay as it really burnt [s], the wind
 * [m/s], and the seed of the noise.
 */
const flights = [
  { name: "first-flight.csv", drag: 1.09, impulse: 0.985, delay: 9.5, wind: 1.5, seed: 11, write: feetAt20 },
  { name: "second-flight.csv", drag: 1.09, impulse: 1.005, delay: 9.9, wind: 2.5, seed: 12, write: pressureAt16 },
  { name: "third-flight.csv", drag: 1.09, impulse: 0.99, delay: 9.4, wind: 2, seed: 13, write: roughAt50 },
];

/** How the flights that are already debriefed were, by the command line: each learns from the ones before. */
export const demoDebriefs = [
  ["debrief", "plan.json", "first-flight.csv", "--set", "9s", "--draws", "2000", "-o", "flights/first.flight.json"],
  [
    "debrief",
    "plan.json",
    "second-flight.csv",
    "--set",
    "9s",
    "--flights",
    "flights",
    "--draws",
    "2000",
    "-o",
    "flights/second.flight.json",
  ],
];

const invented = "Invented: no rocket flew this. Made by scripts/demo-logs.mjs for the demonstration.";

/** The plan's flight with these factors, opened after this delay: its motion at any time from ignition. */
function flown(inputs, { drag, impulse, delay, wind }, { fly, descend }) {
  const { rocket, motor } = inputs;
  const share = wind / Math.hypot(inputs.wind.east, inputs.wind.north);
  const result = fly({
    ...inputs,
    wind: { ...inputs.wind, east: share * inputs.wind.east, north: share * inputs.wind.north },
    rocket: { ...rocket, drag: { ...rocket.drag, scale: rocket.drag.scale * drag } },
    motor: { ...motor, thrust: { ...motor.thrust, thrusts: motor.thrust.thrusts.map((f) => f * impulse) } },
  });
  const fires = result.events.burnout.time + delay;
  const opens = fires + inputs.recovery.lineStretch;
  const descent = descend(result.model, result.at(opens), 1e-7);
  const lands = descent.landing.time;
  const motion = (time) => (time <= opens ? result.at(time) : descent.at(Math.min(time, lands)));
  return {
    fires,
    lands,
    height: (time) => (time <= 0 || time >= lands ? 0 : Math.max(0, motion(time).position[2])),
    /** Along the axis, over ground, 0 at rest [m/s²]: from speeds a hundredth of a second apart. */
    acceleration(time) {
      if (time <= 0 || time >= opens) return 0;
      const [a, b] = [motion(Math.max(0, time - 0.005)), motion(time + 0.005)];
      return (b.velocity[2] - a.velocity[2]) / (b.time - a.time);
    },
  };
}

/** Times of the samples, from ignition, at so many a second. */
function timesOf({ lands }, rate) {
  const rows = Math.floor((padTime + lands + groundTime) * rate);
  return Array.from({ length: rows }, (_, i) => i / rate - padTime);
}

/** Plain: 20 a second, heights in whole feet. */
function feetAt20(flight, { seed }) {
  const noise = normal(seed);
  const rows = timesOf(flight, 20).map((time) => {
    const feet = Math.round((flight.height(time) + 0.25 * noise()) / 0.3048);
    return `${(time + padTime).toFixed(2)},${feet}`;
  });
  return `# ${invented}\n# Demo rocket 76, first flight\nTime (s),Height (ft)\n${rows.join("\n")}\n`;
}

/** Pressure alone, 16 a second, with semicolons and decimal commas. */
function pressureAt16(flight, { seed }, air) {
  const noise = normal(seed);
  const comma = (value, digits) => value.toFixed(digits).replace(".", ",");
  const rows = timesOf(flight, 16).map((time) => {
    const pressure = 0.01 * (air(flight.height(time)).pressure + 3 * noise());
    const battery = 4.05 - 0.0004 * (time + padTime);
    return [comma(time + padTime, 4), comma(pressure, 2), comma(battery, 2)].join(";");
  });
  return `\ufeff# ${invented}\r\nelapsed [s];pressure [hPa];battery [V]\r\n${rows.join("\r\n")}\r\n`;
}

/**
 * Rough: 50 a second in milliseconds, altitudes above the sea, an accelerometer that ends at 12 g, a charge that the
 * pressure sensor feels, a gap, and rows that were cut off.
 */
function roughAt50(flight, { seed }, _air, elevation) {
  const noise = normal(seed);
  const g = 9.80665;
  const rows = timesOf(flight, 50).flatMap((time, i) => {
    if (time > 31.2 && time < 32.1) return [];
    const after = time - flight.fires;
    const blast = after < 0 || after > 0.5 ? 0 : -46 * Math.exp(-after / 0.09);
    const altitude = elevation + flight.height(time) + 0.8 * noise() + blast;
    const jerk = after < 0 || after > 0.3 ? 0 : 14 * g * Math.exp(-after / 0.05) * Math.cos(60 * after);
    const felt = Math.max(-12, Math.min(12, (flight.acceleration(time) + jerk + g) / g + 0.05 * noise()));
    const row = `${Math.round(1000 * (time + padTime))}\t${altitude.toFixed(1)}\t${felt.toFixed(2)}`;
    return [i % 997 === 400 ? row.slice(0, 6) : row];
  });
  return `# ${invented}\n# axis: forward positive, 1 g at rest\nms\taltitude MSL (m)\tacceleration (g)\n${rows.join("\n")}\n`;
}

/**
 * Every log: its name and its text, the same each time.
 *
 * @param library what engine and documents export
 * @param files where the plan comes from
 */
export async function demoLogs(library, files) {
  const { loadPlan, planToEngine, fieldAir } = library;
  const { parts } = await loadPlan(join(demoLogsFolder, "plan.json"), files);
  const made = planToEngine(parts);
  const { air } = made.inputs;
  return flights.map((each) => {
    const flight = flown(made.inputs, each, library);
    return { name: each.name, text: each.write(flight, each, fieldAir(air), air.elevation) };
  });
}

/** Engine and documents, bundled from their sources. */
async function bundledLibrary() {
  const { bundled } = await import("./bundled.mjs");
  const folder = mkdtempSync(join(tmpdir(), "demo-logs-"));
  const contents =
    'export * from "@delaywright/documents"; export { descend, fieldAir, fly } from "@delaywright/engine";';
  const outfile = await bundled({ contents, resolveDir: join(demoLogsFolder, "../..") }, join(folder, "library.mjs"));
  const library = await import(pathToFileURL(outfile));
  rmSync(folder, { recursive: true });
  return library;
}

const disk = {
  resolve: (base, relative) => join(dirname(base), relative),
  read: (path) => Promise.resolve({ ok: true, bytes: readFileSync(path) }),
};

if (process.argv[1] !== undefined && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  mkdirSync(demoLogsFolder, { recursive: true });
  const files = await demoLogs(await bundledLibrary(), disk);
  for (const { name, text } of files) writeFileSync(join(demoLogsFolder, name), text);
  rmSync(join(demoLogsFolder, "flights"), { recursive: true, force: true });
  mkdirSync(join(demoLogsFolder, "flights"));
  const command = join(demoLogsFolder, "../../bin/delaywright.mjs");
  for (const words of demoDebriefs)
    spawnSync(process.execPath, [command, ...words], { cwd: demoLogsFolder, stdio: ["ignore", "ignore", "inherit"] });
  const biome = fileURLToPath(new URL("../node_modules/@biomejs/biome/bin/biome", import.meta.url));
  spawnSync(process.execPath, [biome, "format", "--write", join(demoLogsFolder, "flights")], { stdio: "ignore" });
  process.stdout.write(`${files.length} logs written, ${demoDebriefs.length} of them debriefed\n`);
}
