import { aimChoices, type Dimension, parseQuantity } from "@delaywright/documents";
import type { Aim, QuickModel, TurningModel } from "@delaywright/engine";
import { UsageError } from "./usage.js";

/** A quantity with its unit, as typed after an option. */
export function quantityOf(option: string, text: string, dimension: Dimension, example: string): number {
  const parsed = parseQuantity(text, dimension, example);
  if (parsed.ok) return parsed.value;
  throw new UsageError(
    `${option}: ${JSON.stringify(text)} found; ${parsed.issue.accepted} is accepted, for example ${parsed.issue.example}`,
  );
}

/** As `quantityOf`, from zero up. */
export function positiveOf(option: string, text: string, dimension: Dimension, example: string): number {
  const value = quantityOf(option, text, dimension, example);
  if (value >= 0) return value;
  throw new UsageError(
    `${option}: ${JSON.stringify(text)} found; nothing below zero is accepted, for example ${example}`,
  );
}

/** A whole number within bounds. */
export function wholeOf(option: string, text: string, least: number, most: number): number {
  const value = /^\d{1,10}$/.test(text) ? Number(text) : Number.NaN;
  if (value >= least && value <= most) return value;
  throw new UsageError(
    `${option}: ${JSON.stringify(text)} found; a whole number from ${least} to ${most} is accepted, for example ${Math.max(least, 1)}`,
  );
}

/** One of a few words. */
export function choiceOf<const Choice extends string>(
  option: string,
  text: string,
  choices: readonly [Choice, ...Choice[]],
): Choice {
  const found = choices.find((choice) => choice === text);
  if (found !== undefined) return found;
  throw new UsageError(
    `${option}: ${JSON.stringify(text)} found; ${choices.slice(0, -1).join(", ")} or ${choices.at(-1)} is accepted, for example ${option} ${choices[0]}`,
  );
}

/** How the body turns in the wind. */
export function modelOf(text: string): TurningModel {
  return choiceOf("--model", text, ["pitching", "aligned", "rigid"]);
}

/** As `modelOf`, where so many flights are drawn that the rigid model would take minutes. */
export function quickModelOf(text: string): QuickModel {
  if (text !== "rigid") return choiceOf("--model", text, ["pitching", "aligned"]);
  throw new UsageError(
    "--model: rigid flies one plan at a time (decide, fly); pitching or aligned is accepted here, for example --model pitching",
  );
}

/** As `quantityOf`, above zero. */
export function aboveZeroOf(option: string, text: string, dimension: Dimension, example: string): number {
  const value = quantityOf(option, text, dimension, example);
  if (value > 0) return value;
  throw new UsageError(`${option}: ${JSON.stringify(text)} found; more than zero is accepted, for example ${example}`);
}

/** Time between rows of a trajectory. */
export function everyOf(text: string): number {
  const value = aboveZeroOf("--every", text, "time", "0.05s");
  if (value >= 0.001) return value;
  throw new UsageError(`--every: ${JSON.stringify(text)} found; 0.001 s or more is accepted, for example 0.05s`);
}

/** The name of what motors are ordered by. */
export function aimNameOf(name: string): Aim["by"] {
  const found = aimChoices.find(({ by }) => by === name);
  if (found !== undefined) return found.by;
  throw new UsageError(
    `--aim: ${JSON.stringify(name)} found; one of ${aimChoices.map(({ by }) => by).join(", ")} is accepted, for example --aim best-odds`,
  );
}

/** What motors are ordered by; a height alone asks for the nearest. */
export function aimOf({ name, height }: { readonly name?: Aim["by"]; readonly height?: number }): Aim {
  const by = name ?? (height === undefined ? "best-odds" : "nearest-height");
  if (by !== "nearest-height") {
    if (height === undefined) return { by };
    throw new UsageError(`--height: belongs to --aim nearest-height, not to --aim ${by}`);
  }
  if (height === undefined)
    throw new UsageError("--height: missing; --aim nearest-height wants one, for example --height 800m");
  return { by, height };
}
