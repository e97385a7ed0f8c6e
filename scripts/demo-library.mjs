// Writes the demo's motor library, cli/examples/demo-motors: `node scripts/demo-library.mjs`. Every motor and figure is made up.
import { mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { uniform } from "./seeded.mjs";

/** Where the library lies. */
export const demoLibraryFolder = join(
  dirname(dirname(fileURLToPath(import.meta.url))),
  "cli",
  "examples",
  "demo-motors",
);

const seed = 20_261_128;
const standardGravity = 9.80665;

/** Of a usual composite propellant, with the core that burns out of it [kg/m³]. */
const grainDensity = 1500;
const closures = 0.042;

/** Thrust over time as shares of mean and burn: first rise, then how it burns. */
// biome-ignore format: a row a profile
const profiles = {
  neutral: [[0, 0], [0.02, 0.96], [0.12, 1.08], [0.5, 1.06], [0.88, 0.98], [0.96, 0.35], [1, 0]],
  regressive: [[0, 0], [0.02, 1.3], [0.1, 1.52], [0.4, 1.22], [0.75, 0.74], [0.93, 0.42], [1, 0]],
  progressive: [[0, 0], [0.03, 0.7], [0.2, 0.82], [0.55, 1.08], [0.86, 1.36], [0.95, 0.6], [1, 0]],
  "long burn": [[0, 0], [0.01, 1.75], [0.08, 1.6], [0.2, 1.05], [0.6, 0.94], [0.9, 0.78], [1, 0]],
};

/** Diameter in millimetres, class and average thrust, share of the way up the class, how it burns, delay in seconds. */
const motors = [
  [24, "F43", 0.45, "neutral", "adjustable", 10],
  [24, "F54", 0.6, "regressive", "adjustable", 9],
  [24, "F34", 0.7, "long burn", "fixed", 6],
  [24, "F68", 0.5, "progressive", "fixed", 4],
  [29, "F38", 0.85, "long burn", "adjustable", 10],
  [29, "F76", 0.9, "regressive", "fixed", 7],
  [29, "F58", 0.8, "neutral", "none", 0],
  [24, "G47", 0.1, "long burn", "fixed", 7],
  [29, "G51", 0.35, "long burn", "adjustable", 12],
  [29, "G63", 0.55, "neutral", "adjustable", 10],
  [29, "G81", 0.7, "regressive", "adjustable", 14],
  [29, "G97", 0.5, "progressive", "adjustable", 10],
  [29, "G114", 0.8, "neutral", "fixed", 8],
  [38, "G59", 0.6, "long burn", "adjustable", 12],
  [38, "G93", 0.75, "neutral", "adjustable", 12],
  [38, "G112", 0.9, "regressive", "adjustable", 10],
  [29, "H104", 0.2, "long burn", "adjustable", 14],
  [29, "H157", 0.35, "regressive", "adjustable", 14],
  [29, "H202", 0.3, "neutral", "fixed", 10],
  [38, "H93", 0.25, "long burn", "adjustable", 14],
  [38, "H107", 0.5, "long burn", "adjustable", 14],
  [38, "H141", 0.4, "progressive", "adjustable", 14],
  [38, "H146", 0.65, "neutral", "adjustable", 14],
  [38, "H168", 0.75, "regressive", "adjustable", 14],
  [38, "H186", 0.85, "neutral", "adjustable", 12],
  [38, "H214", 0.6, "regressive", "adjustable", 14],
  [38, "H228", 0.95, "progressive", "adjustable", 14],
  [38, "H116", 0.9, "long burn", "none", 0],
  [38, "I107", 0.05, "long burn", "adjustable", 16],
  [38, "I143", 0.2, "long burn", "adjustable", 14],
  [38, "I163", 0.1, "neutral", "adjustable", 14],
  [38, "I193", 0.3, "regressive", "adjustable", 14],
  [38, "I214", 0.45, "progressive", "adjustable", 14],
  [38, "I253", 0.55, "neutral", "adjustable", 16],
  [38, "I312", 0.4, "regressive", "adjustable", 12],
  [38, "I346", 0.7, "neutral", "fixed", 14],
  [54, "I178", 0.6, "long burn", "adjustable", 16],
  [54, "I233", 0.8, "progressive", "adjustable", 16],
  [54, "I292", 0.9, "regressive", "adjustable", 14],
  [38, "J302", 0.05, "regressive", "adjustable", 16],
  [38, "J263", 0.12, "neutral", "none", 0],
  [54, "J174", 0.3, "long burn", "adjustable", 16],
  [54, "J247", 0.5, "neutral", "adjustable", 16],
  [54, "J314", 0.7, "progressive", "adjustable", 18],
  [54, "J406", 0.85, "regressive", "adjustable", 16],
  [54, "K212", 0.15, "long burn", "none", 0],
  [54, "K334", 0.3, "neutral", "adjustable", 18],
  [54, "K516", 0.45, "regressive", "none", 0],
];

/** Impulse at which a class begins, of F to K [N s]; the next begins at twice as much. */
const classFrom = { F: 40, G: 80, H: 160, I: 320, J: 640, K: 1280 };

/** Seconds of delay stand for so much charge [g], by diameter. */
const charges = { 24: [0.6, 0.8], 29: [0.7, 1.0], 38: [1.0, 1.4], 54: [1.4, 2.2] };

const area = (points) =>
  points.slice(1).reduce((sum, [t, f], i) => sum + 0.5 * (t - points[i][0]) * (f + points[i][1]), 0);

/** Share of the whole time between the first rise and the last fall through 5 % of the peak: the burn, as certified. */
function burnShare(points) {
  const threshold = 0.05 * Math.max(...points.map(([, f]) => f));
  const crossing = ([t0, f0], [t1, f1]) => t0 + ((threshold - f0) / (f1 - f0)) * (t1 - t0);
  return crossing(points.at(-2), points.at(-1)) - crossing(points[0], points[1]);
}

/** The curve of a profile with this impulse and this average over its burn. */
function curveOf(points, impulse, averageThrust) {
  const time = impulse / averageThrust / burnShare(points);
  const mean = impulse / time / area(points);
  return {
    time: points.map(([t]) => Number((t * time).toFixed(3))),
    newtons: points.map(([, f]) => Number((f * mean).toFixed(1))),
  };
}

function delayOf(kind, seconds, [charge, wellHolds], random) {
  if (kind === "none") return { kind };
  const common = { charge: `${charge.toFixed(1)} g`, wellHolds: `${wellHolds.toFixed(1)} g` };
  if (kind === "fixed") return { kind, seconds: `${seconds} s`, ...common };
  const chance = random();
  const tool = chance < 0.12 ? "Depth-stop bit (demo)" : "Two-collar cutter (demo)";
  return {
    kind,
    longest: `${seconds} s`,
    mostRemoved: `${Math.min(8, seconds - 2)} s`,
    leastLeft: "2 s",
    depthPerSecond: "1/32 in",
    clock: "burnout",
    ...(chance > 0.93 ? {} : { instructions: { allowCutting: true, tool } }),
    ...common,
  };
}

function motorOf([diameter, label, share, profile, kind, seconds], random) {
  const letter = label[0];
  const averageThrust = Number(label.slice(1));
  const impulse = classFrom[letter] * (1.02 + 0.96 * share);
  const specificImpulse = 180 + 40 * random();
  const propellant = impulse / (specificImpulse * standardGravity);
  const loaded = propellant / (0.46 + 0.08 * random());
  const length = propellant / (grainDensity * 0.25 * Math.PI * (0.001 * diameter - 0.005) ** 2) + closures;
  const price = Math.round(14 + 1.9 * Math.sqrt(impulse) + 6 * random());
  return {
    kind: "motor",
    version: 1,
    name: `Demo ${label}${kind === "fixed" ? ` (${seconds} s)` : kind === "none" ? " (plugged)" : ""}`,
    maker: "invented for the demo",
    designation: `${label}-${kind === "none" ? "P" : seconds}`,
    diameter: `${diameter} mm`,
    length: `${Math.round(1000 * length)} mm`,
    loadedMass: `${Math.round(1000 * loaded)} g`,
    propellantMass: `${Math.round(1000 * propellant)} g`,
    thrust: curveOf(profiles[profile], impulse, averageThrust),
    delay: delayOf(kind, seconds, charges[diameter], random),
    ...(random() < 0.12 ? {} : { price }),
    ...(random() < 0.08 ? {} : { certified: "an association invented for the demo" }),
  };
}

/** As the formatter wants it: a list of numbers on one line. */
function textOf(motor) {
  const text = JSON.stringify(motor, null, 2);
  return `${text.replace(/\[\s+([-\d.,\s]+?)\s+\]/g, (_, list) => `[${list.split(/,\s+/).join(", ")}]`)}\n`;
}

/** Every file of the library: its name and its text, the same each time. */
export function demoLibrary() {
  const random = uniform(seed);
  return motors.map((row) => {
    const motor = motorOf(row, random);
    return { name: `demo-${row[1].toLowerCase()}.motor.json`, text: textOf(motor) };
  });
}

if (process.argv[1] !== undefined && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  mkdirSync(demoLibraryFolder, { recursive: true });
  const files = demoLibrary();
  for (const name of readdirSync(demoLibraryFolder))
    if (!files.some((file) => file.name === name)) rmSync(join(demoLibraryFolder, name));
  for (const { name, text } of files) writeFileSync(join(demoLibraryFolder, name), text);
  process.stdout.write(`${files.length} motors written\n`);
}
