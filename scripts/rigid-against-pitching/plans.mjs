// Plans over the demo library and the weather, drawn by seed: the same ones each time.

import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { uniform } from "../seeded.mjs";

const examples = join(dirname(fileURLToPath(import.meta.url)), "..", "..", "cli", "examples");
const read = (...path) => JSON.parse(readFileSync(join(examples, ...path), "utf8"));

const rockets = ["demo-54", "demo-76"];
const tools = ["two-collar", "depth-stop"];
const mountOfExamples = 38;

/** Motors of the library whose delay can be cut, in the order of their names. */
function adjustableMotors() {
  return readdirSync(join(examples, "demo-motors"))
    .sort()
    .map((name) => read("demo-motors", name))
    .filter(({ delay }) => delay.kind === "adjustable");
}

/** Every quantity of a rocket that is given in these units, times a factor. */
function scaled(part, factors) {
  if (Array.isArray(part)) return part.map((each) => scaled(each, factors));
  if (typeof part === "object" && part !== null)
    return Object.fromEntries(Object.entries(part).map(([key, value]) => [key, scaled(value, factors)]));
  const [, number, unit] = (typeof part === "string" ? /^([\d.]+) (\S.*)$/.exec(part) : null) ?? [];
  const factor = factors[unit];
  return factor === undefined ? part : `${Number((Number(number) * factor).toPrecision(6))} ${unit}`;
}

/**
 * An example rocket made for another mount: lengths with the mount, mass with its power of 2.5, mass and span of the fins changed a
 * little by chance.
 */
function rocketFor(motorDiameter, random) {
  const size = motorDiameter / mountOfExamples;
  const mass = size ** 2.5 * (0.85 + 0.45 * random());
  const finSpan = 0.9 + 0.25 * random();
  const { inertiaWithoutMotor: inertia, ...rest } = read(
    "larkmoor",
    `${rockets[Math.floor(random() * 2)]}.rocket.json`,
  );
  const rocket = scaled(rest, { m: size, mm: size, kg: mass, N: size ** 2, kN: size ** 2 });
  return {
    ...rocket,
    name: `${rest.name}, for ${motorDiameter} mm`,
    inertiaWithoutMotor: scaled(inertia, { m: size, s: Math.sqrt(size), "kg m2": mass * size ** 2 }),
    fins: rocket.fins.map((set) => ({ ...set, span: scaled(set.span, { mm: finSpan }) })),
    mount: { ...rocket.mount, diameter: `${motorDiameter} mm` },
    recovery: { ...rocket.recovery, lineStretch: rest.recovery.lineStretch },
  };
}

function weatherOf(random) {
  const temperature = `${(-5 + 40 * random()).toFixed(1)} degC`;
  const wind = 9 * random();
  const from = 360 * random();
  const aloft = random() < 0.3;
  const terrain = ["open", "open", "rough", "water", "wooded"][Math.floor(random() * 5)];
  const growth = 1 + 1.5 * random();
  const veer = 60 * (random() - 0.3);
  const near = { wind: `${wind.toFixed(2)} m/s`, windFrom: `${from.toFixed(1)} deg`, measuredAt: "2 m", terrain };
  if (!aloft) return { temperature, ...near };
  const heights = [2, 10, 60, 150, 500, 1200, 3000];
  const share = [0, 0.25, 0.45, 0.6, 0.75, 0.9, 1];
  return {
    temperature,
    aloft: heights.map((height, i) => ({
      height: `${height} m`,
      wind: `${(wind * (1 + (growth - 1) * share[i])).toFixed(2)} m/s`,
      from: `${(from + veer * share[i]).toFixed(1)} deg`,
    })),
  };
}

/**
 * One plan drawn by chance, with all that it refers to, as files by path; the plan is `plan.json`.
 *
 * @param seed any integer
 * @param number which of the seed's plans, ≥ 0; not every one suits a flight
 */
export function drawnPlan(seed, number) {
  const random = uniform(Math.imul(seed, 0x9e3779b1) ^ Math.imul(number + 1, 0x85ebca6b));
  for (let i = 0; i < 4; i++) random();
  const motors = adjustableMotors();
  const motor = motors[Math.floor(random() * motors.length)];
  const rocket = rocketFor(Number.parseFloat(motor.diameter), random);
  const weather = weatherOf(random);
  const plan = {
    kind: "plan",
    version: 1,
    name: `Drawn plan ${number} of seed ${seed}`,
    rocket: "rocket.json",
    motor: "motor.json",
    tool: "tool.json",
    field: {
      kind: "field",
      version: 1,
      name: "A field invented for the comparison",
      elevation: `${Math.round(1800 * random())} m`,
      latitude: `${(60 * random()).toFixed(1)} deg`,
    },
    weather,
    guide: {
      rail: `${(1.8 + 3 * random()).toFixed(2)} m`,
      stop: "150 mm",
      tilt: `${(6 * random() ** 2).toFixed(2)} deg`,
      toward: `${(360 * random()).toFixed(0)} deg`,
    },
    spread: { dragScale: random() < 0.5 ? 0.08 : 0.15 },
  };
  const tool = read("larkmoor", `${tools[Math.floor(random() * 2)]}.tool.json`);
  const files = { "plan.json": plan, "rocket.json": rocket, "motor.json": motor, "tool.json": tool };
  return Object.fromEntries(Object.entries(files).map(([name, document]) => [name, JSON.stringify(document)]));
}
