import { type Command, Option } from "commander";
import { together } from "./usage.js";

/** What commands that take a plan may be given, as typed. */
export interface PlanOptions {
  readonly json?: boolean;
  readonly csv?: boolean;
  readonly allChecks?: boolean;
  readonly model?: string;
  readonly draws?: string;
  readonly draw?: string;
  readonly seed?: string;
  readonly workers?: string;
  readonly delay?: string;
  readonly every?: string;
}

/** Does what a command asks for and keeps its exit code. */
export type Act = (act: () => Promise<number>) => Promise<void>;

/** Most draws that are flown: their figures must fit into memory. */
export const MOST_DRAWS = 200_000;
export const MOST_SEED = 2_147_483_647;

const WORKERS = "threads that fly the draws; the figures are the same with any number";

export const modelOption = () =>
  new Option("--model <name>", "how the body turns in the wind: pitching (unless given), aligned or rigid");
export const jsonOption = () => new Option("--json", "for machines: SI numbers, as the JSON Schema says");
export const seedOption = () => new Option("--seed <n>", "seed of the draws, 1 unless given");

/** An object with a field where a text was given, read by `read`. */
export function given<Key extends string, Value>(
  key: Key,
  text: string | undefined,
  read: (text: string) => Value,
): { [K in Key]?: Value } {
  return text === undefined ? {} : ({ [key]: read(text) } as { [K in Key]?: Value });
}

export const flag = <Key extends string>(key: Key, on: boolean | undefined): { [K in Key]?: boolean } =>
  on ? ({ [key]: true } as { [K in Key]?: boolean }) : {};

/** Gives a command what all have that fly draws: `--json`, `--model`, `--draws`, `--seed`, `--workers`. */
export function addDrawing(
  command: Command,
  draws = "flights to draw, 10000 unless given; 500 of the rigid model",
  workers = WORKERS,
): Command {
  return command
    .addOption(jsonOption())
    .addOption(modelOption())
    .addOption(new Option("--draws <n>", draws))
    .addOption(seedOption())
    .addOption(new Option("--workers <n>", workers));
}

/** What was given of `addDrawing`, read. */
export async function drawingOf({ model, ...options }: PlanOptions) {
  const { modelOf } = await import("./values.js");
  return together(
    () => drawsOf(options),
    () => given("model", model, modelOf),
  );
}

/** As `drawingOf`, without the rigid model. */
export async function quickDrawingOf({ model, ...options }: PlanOptions) {
  const { quickModelOf } = await import("./values.js");
  return together(
    () => drawsOf(options),
    () => given("model", model, quickModelOf),
  );
}

async function drawsOf({ json, draws, seed, workers }: Omit<PlanOptions, "model">) {
  const { wholeOf } = await import("./values.js");
  return together(
    () => flag("json", json),
    () => given("draws", draws, (text) => wholeOf("--draws", text, 1, MOST_DRAWS)),
    () => given("seed", seed, (text) => wholeOf("--seed", text, 0, MOST_SEED)),
    () => given("workers", workers, (text) => wholeOf("--workers", text, 1, 32)),
  );
}
