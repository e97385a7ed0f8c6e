import { type Raw, readThrust } from "@delaywright/documents";
import type { Arriving } from "./exchange.js";

const documents = import.meta.glob<Raw>("../../../cli/examples/larkmoor/*.json", { eager: true, import: "default" });
const plans = import.meta.glob<Raw>("../../../cli/examples/worked-example/plan.json", {
  eager: true,
  import: "default",
});
const tables = import.meta.glob<string>("../../../cli/examples/larkmoor/*.csv", {
  eager: true,
  import: "default",
  query: "?raw",
});

/** The plan of the worked example, as it is called where nothing else is. */
export const EXAMPLE_PLAN = "worked-example.plan.json";

const NOTE = "Invented for the demo: there is no such rocket, motor, tool or field.";

function fileName(path: string): string {
  return path.slice(path.lastIndexOf("/") + 1);
}

/** A thrust curve from its table. */
function thrustOf(name: string): unknown {
  const [, text = ""] = Object.entries(tables).find(([path]) => fileName(path) === fileName(name)) ?? [];
  const read = readThrust(text);
  return read.ok ? { time: [...read.curve.times], newtons: [...read.curve.thrusts] } : name;
}

/** A document of the example as it lies on the bench: no folders, and a note that it is invented. */
function onBench(raw: Raw): Raw {
  const { kind, version, name, note, $schema, ...rest } = raw;
  const flat = Object.entries(rest).map(([key, value]): [string, unknown] => {
    if (typeof value !== "string") return [key, value];
    if (key === "thrust") return [key, thrustOf(value)];
    return [key, value.endsWith(".json") ? fileName(value) : value];
  });
  return { kind, version, name, note: note ?? NOTE, ...Object.fromEntries(flat) };
}

/** The documents of the worked example, its plan last. */
export function workedExample(): Arriving[] {
  const [plan] = Object.values(plans);
  const files = Object.entries(documents).map(([path, raw]): [string, Raw] => [fileName(path), raw]);
  if (plan !== undefined) files.push([EXAMPLE_PLAN, plan]);
  return files.map(([path, raw]) => ({ path, content: { raw: onBench(raw), text: null, drafts: {} } }));
}
